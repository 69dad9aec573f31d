package org.barreltally.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import org.barreltally.refusal.InvalidField;

/**
 * An amount of money: {@code 28.00 USD}. Always has as many decimals as its currency (ISO 4217);
 * may be negative, for a difference can be.
 *
 * @param currency the three letters of ISO 4217
 */
public record Money(BigDecimal amount, String currency) {

  private static final BigDecimal MOST = new BigDecimal("1000000000000");

  /**
   * @throws InvalidField naming {@code currency} or {@code amount}: unknown, missing, a trillion or
   *     more, or with more decimals than the currency has
   */
  public Money {
    int decimals = decimals(currency);
    if (amount == null) {
      throw new InvalidField("amount", "Give the amount, for example 28.00.");
    }
    if (amount.abs().compareTo(MOST) >= 0) {
      throw new InvalidField("amount", "Give an amount under a trillion.");
    }
    if (amount.stripTrailingZeros().scale() > decimals) {
      throw new InvalidField(
          "amount", "%s has %d decimals; give no more.".formatted(currency, decimals));
    }
    amount = amount.setScale(decimals);
  }

  public static Money of(String amount, String currency) {
    return new Money(new BigDecimal(amount), currency);
  }

  /** A computed amount, rounded half up to the currency's decimals (5 goes away from zero). */
  public static Money rounded(BigDecimal amount, String currency) {
    return new Money(amount.setScale(decimals(currency), RoundingMode.HALF_UP), currency);
  }

  public static Money none(String currency) {
    return new Money(BigDecimal.ZERO, currency);
  }

  /**
   * @throws CurrencyMismatch if the other is of another currency
   */
  public Money plus(Money other) {
    return new Money(amount.add(same(other).amount), currency);
  }

  /**
   * @throws CurrencyMismatch if the other is of another currency
   */
  public Money minus(Money other) {
    return new Money(amount.subtract(same(other).amount), currency);
  }

  /** So many times this, rounded once, half up. */
  public Money times(BigDecimal factor) {
    return rounded(amount.multiply(factor), currency);
  }

  /** -1, 0 or 1 as the amount is negative, zero or positive. */
  public int signum() {
    return amount.signum();
  }

  private Money same(Money other) {
    if (!currency.equals(other.currency)) {
      throw new CurrencyMismatch(currency, other.currency, "currency");
    }
    return other;
  }

  private static int decimals(String currency) {
    if (currency == null || !currency.matches("[A-Z]{3}")) {
      throw unknown();
    }
    try {
      int decimals = Currency.getInstance(currency).getDefaultFractionDigits();
      if (decimals < 0) {
        throw unknown(); // gold, test codes and the like
      }
      return decimals;
    } catch (IllegalArgumentException e) {
      throw unknown();
    }
  }

  private static InvalidField unknown() {
    return new InvalidField(
        "currency", "Give the currency by its three letters of ISO 4217, for example USD.");
  }

  /** For people and logs: {@code 28.00 USD}. */
  @Override
  public String toString() {
    return amount.toPlainString() + " " + currency;
  }
}
