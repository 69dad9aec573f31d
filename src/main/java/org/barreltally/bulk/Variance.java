package org.barreltally.bulk;

import java.math.BigDecimal;
import org.barreltally.pricing.Money;

/**
 * What the agreed figures brought above ours (below zero: less), and why. The split is the one of
 * standard costing, quantity and price variance: (actual − standard quantity) × standard price, and
 * (actual − standard price) × actual quantity (OpenStax <i>Principles of Accounting</i>, volume 2,
 * chapter on standard costs; section 8.2 from memory).
 *
 * @param total agreed amount minus ours
 * @param byWeight difference of weight at our grade's price
 * @param byGrade difference of price at the agreed weight; the two add up to the total exactly
 */
public record Variance(Money total, Money byWeight, Money byGrade) {

  /**
   * The split of two readings. Both amounts are rounded already, so a cent may be left over; it
   * goes to the grade, unless the price is the same and there is no difference of grade to hold it.
   */
  static Variance between(Figures ours, Figures agreed) {
    Money total = agreed.amount().minus(ours.amount());
    boolean samePrice = agreed.pricePerLb().equals(ours.pricePerLb());
    BigDecimal pounds = agreed.pounds().subtract(ours.pounds());
    Money byWeight = samePrice ? total : ours.pricePerLb().times(pounds);
    return new Variance(total, byWeight, total.minus(byWeight));
  }
}
