package org.barreltally.gifts;

import java.time.LocalDate;
import java.util.Locale;
import java.util.UUID;
import org.barreltally.pricing.Money;

/**
 * Money the buyer paid.
 *
 * @param amount below zero: paid back
 */
public record Payment(UUID id, Kind kind, Money amount, LocalDate on) {

  /** When in the order's life it was paid. */
  public enum Kind {
    DEPOSIT,
    PAYMENT;

    /** {@code deposit, payment}. */
    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** The kind with this code, which the database guarantees to exist. */
    public static Kind of(String code) {
      return valueOf(code.toUpperCase(Locale.ROOT));
    }
  }
}
