package org.barreltally.bulk;

import org.barreltally.measure.ColorClass;
import org.barreltally.refusal.Refusal;

/** A grade of the sale has no price, so that the difference in grade cannot be reckoned. */
public final class PriceMissing extends Refusal {
  public PriceMissing(ColorClass grade, String side) {
    super(
        Kind.INVALID,
        "price-missing",
        "A grade has no price",
        "By the %s reading it is %s, and no price per lb is given for that grade. Give it in prices."
            .formatted(side, grade.code()),
        "prices." + grade.code());
  }
}
