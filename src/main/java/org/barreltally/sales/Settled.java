package org.barreltally.sales;

import java.util.Objects;
import java.util.stream.Stream;
import org.barreltally.pricing.Money;

/**
 * What was handed over against what was due.
 *
 * @param change given back of the cash
 * @param difference what was kept beyond what was due, below zero where it was less; null where
 *     either is not known
 */
record Settled(Money change, Money difference) {

  /**
   * Change is only given of cash: what card and promise came to over the total is not given back.
   */
  static Settled of(Money total, SaidSale.Paid paid, String currency) {
    Money none = Money.none(currency);
    if (paid == null || total == null) {
      return new Settled(none, null);
    }
    Money cash = paid.cash() == null ? none : paid.cash();
    Money over = sum(paid, currency).minus(total);
    Money change = over.signum() <= 0 ? none : over.minus(cash).signum() > 0 ? cash : over;
    return new Settled(change, over.minus(change));
  }

  static Money sum(SaidSale.Paid paid, String currency) {
    return Stream.of(paid.cash(), paid.card(), paid.owing())
        .filter(Objects::nonNull)
        .reduce(Money.none(currency), Money::plus);
  }
}
