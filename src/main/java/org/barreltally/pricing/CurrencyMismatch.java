package org.barreltally.pricing;

import org.barreltally.refusal.Refusal;

/** Amounts of two currencies were to be put together; nothing is converted silently. */
public final class CurrencyMismatch extends Refusal {
  public CurrencyMismatch(String one, String other, String field) {
    super(
        Kind.INVALID,
        "currency-mismatch",
        "Two currencies in one sum",
        "%s and %s cannot be put together. Give all amounts in one currency.".formatted(one, other),
        field);
  }
}
