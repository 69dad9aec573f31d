package org.barreltally.documents;

import org.barreltally.refusal.Refusal;

/** A text would run out of its label even in the smallest type and wrapped. */
public final class TextDoesNotFit extends Refusal {
  public TextDoesNotFit(String field, String reason) {
    super(
        Kind.RULE,
        "text-does-not-fit",
        "This does not fit on the label",
        reason + " Choose a sheet with larger labels, or shorten it.",
        field);
  }
}
