package org.barreltally.pricing;

import java.time.LocalDate;
import org.barreltally.refusal.Refusal;

/** A list was to end before it begins. */
public final class ValidityReversed extends Refusal {
  public ValidityReversed(LocalDate from, LocalDate to) {
    super(
        Kind.RULE,
        "validity-reversed",
        "It ends before it begins",
        "The list is valid from %s, but its last day is %s. Give a last day that is not earlier, or leave it out."
            .formatted(from, to),
        "validTo");
  }
}
