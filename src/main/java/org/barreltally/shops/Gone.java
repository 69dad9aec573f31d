package org.barreltally.shops;

import java.math.BigDecimal;
import org.barreltally.pricing.Money;

/**
 * What became of the jars of one lot and size that no longer stand in a shop, in pieces.
 *
 * @param missing neither sold nor broken; below zero where more turned up than the book had
 */
record Gone(long sold, long broken, long missing) {

  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  /** Without the shop's word on sales, all that is gone and not broken was sold. */
  static Gone of(long book, CountShop.Line line) {
    long broken = line.broken() == null ? 0 : line.broken();
    long left = book - line.count() - broken;
    long sold = line.sold() == null ? Math.max(0, left) : line.sold();
    return new Gone(sold, broken, left - sold);
  }

  /**
   * What the shop owes for them: price × (sold + what it bears of missing and broken) × (1 −
   * commission), rounded once, half up. What turned up beyond the book lowers nothing.
   */
  Money due(Money price, Terms terms) {
    BigDecimal borne =
        BigDecimal.valueOf(Math.max(0, missing) + broken)
            .multiply(terms.shopBearsPercent())
            .divide(HUNDRED);
    BigDecimal kept = HUNDRED.subtract(terms.commissionPercent()).divide(HUNDRED);
    return Money.rounded(
        price.amount().multiply(BigDecimal.valueOf(sold).add(borne)).multiply(kept),
        price.currency());
  }
}
