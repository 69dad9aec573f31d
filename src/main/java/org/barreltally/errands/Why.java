package org.barreltally.errands;

import java.util.List;
import java.util.UUID;
import org.barreltally.refusal.Refusal;

/**
 * Why an errand came to nothing.
 *
 * @param code the rule's stable name
 * @param errors the fields to mend, for example {@code line 3, column material}
 */
public record Why(String code, String title, String detail, List<Refusal.FieldError> errors) {

  public static Why of(Refusal refusal) {
    return new Why(refusal.code(), refusal.title(), refusal.detail(), refusal.errors());
  }

  /** A fault of the program, which its log tells of under that number. */
  public static Why defect(UUID incident) {
    return new Why(
        "defect",
        "Something is broken here",
        "This is a fault of the program, not of what you asked. Whoever looks after it finds the cause"
            + " in its log under incident "
            + incident
            + ".",
        List.of());
  }
}
