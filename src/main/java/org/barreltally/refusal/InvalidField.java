package org.barreltally.refusal;

import java.util.List;

/** A field is missing, malformed or out of its range. */
public final class InvalidField extends Refusal {

  public InvalidField(String field, String message) {
    super(Kind.INVALID, "invalid-field", "A field needs mending", message, field);
  }

  public InvalidField(List<FieldError> errors) {
    super(
        Kind.INVALID,
        "invalid-field",
        errors.size() == 1 ? "A field needs mending" : "Some fields need mending",
        errors.size() == 1
            ? errors.get(0).message()
            : errors.size() + " fields need mending; each is named below.",
        errors);
  }
}
