package org.barreltally.barrels;

import org.barreltally.measure.Quantity;
import org.barreltally.refusal.Refusal;

/** The full vessel is said to weigh no more than the empty one. */
public final class GrossUnderTare extends Refusal {
  public GrossUnderTare(Quantity gross, Quantity tare) {
    super(
        Kind.RULE,
        "gross-under-tare",
        "Gross is under tare",
        "Gross %s is not more than tare %s. Check which is which, and the units."
            .formatted(gross, tare),
        "gross");
  }
}
