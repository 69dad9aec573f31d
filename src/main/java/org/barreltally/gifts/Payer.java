package org.barreltally.gifts;

import java.util.Locale;

/** Who bears the cost of a mailing. */
public enum Payer {
  BUYER,
  MAKER;

  /** {@code buyer, maker}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The payer with this code, which the database guarantees to exist. */
  public static Payer of(String code) {
    return valueOf(code.toUpperCase(Locale.ROOT));
  }
}
