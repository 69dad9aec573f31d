package org.barreltally.barrels;

import org.barreltally.measure.Quantity;
import org.barreltally.refusal.Refusal;

/** More syrup is said to be in the vessel than fits in. */
public final class OverCapacity extends Refusal {
  public OverCapacity(String tag, Quantity said, Quantity capacity, String field) {
    super(
        Kind.RULE,
        "over-capacity",
        "It does not hold that much",
        "%s is said to hold %s at 68 °F, but it takes only %s. Check weight and tag, or its capacity."
            .formatted(tag, said, capacity),
        field);
  }
}
