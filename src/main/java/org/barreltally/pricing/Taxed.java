package org.barreltally.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.UUID;

/**
 * The tax on one line.
 *
 * @param rate the id of the rate; null where none was entered, then the tax is 0
 * @param percent of the rate; null where none was entered
 * @param net without tax
 * @param tax rounded half up to the currency's decimals, once
 * @param gross with tax
 */
public record Taxed(UUID rate, BigDecimal percent, Money net, Money tax, Money gross) {

  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  /** On top of an amount: amount × percent / 100. */
  public static Taxed onTop(Money amount, TaxRate rate) {
    Money tax =
        Money.rounded(amount.amount().multiply(rate.percent()).movePointLeft(2), amount.currency());
    return new Taxed(rate.id(), rate.percent(), amount, tax, amount.plus(tax));
  }

  /** Within an amount: amount × percent / (100 + percent). */
  public static Taxed within(Money amount, TaxRate rate) {
    BigDecimal part = amount.amount().multiply(rate.percent());
    int decimals = amount.amount().scale();
    // one division, rounded once: dividing exactly to the currency's decimals, half away from zero
    Money tax =
        new Money(
            part.divide(HUNDRED.add(rate.percent()), decimals, RoundingMode.HALF_UP),
            amount.currency());
    return new Taxed(rate.id(), rate.percent(), amount.minus(tax), tax, amount);
  }

  /** Where no rate was entered. */
  public static Taxed unknown(Money amount) {
    return new Taxed(null, null, amount, Money.none(amount.currency()), amount);
  }
}
