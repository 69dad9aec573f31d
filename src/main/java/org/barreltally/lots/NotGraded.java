package org.barreltally.lots;

import org.barreltally.refusal.Refusal;

/** A lot was to be released or packed whose colour was not measured or which nobody tasted. */
public final class NotGraded extends Refusal {
  public NotGraded(String lot) {
    super(
        Kind.CONFLICT,
        "not-graded",
        "Not graded yet",
        "Lot "
            + lot
            + " has no grade. Measure its light transmittance, taste it and record both first.");
  }
}
