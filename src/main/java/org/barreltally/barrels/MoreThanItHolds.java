package org.barreltally.barrels;

import org.barreltally.measure.Quantity;
import org.barreltally.refusal.Refusal;

/**
 * More was to be drawn than the book says is in the vessel, beyond the uncertainty of the scale.
 */
public final class MoreThanItHolds extends Refusal {
  public MoreThanItHolds(String tag, Quantity wanted, Quantity there, Quantity uncertainty) {
    super(
        Kind.CONFLICT,
        "more-than-it-holds",
        "It does not hold that much",
        "%s holds %s on the book (± %s); %s cannot be drawn. Weigh it again, or draw all of it."
            .formatted(tag, there, uncertainty, wanted),
        "weight");
  }
}
