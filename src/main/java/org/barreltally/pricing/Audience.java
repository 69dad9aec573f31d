package org.barreltally.pricing;

import java.util.Locale;

/** For whom a price list is. */
public enum Audience {
  RETAIL,
  SHOW,
  WHOLESALE,
  BULK;

  /** {@code retail, show, wholesale, bulk}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The audience with this code, which the database guarantees to exist. */
  public static Audience of(String code) {
    return valueOf(code.toUpperCase(Locale.ROOT));
  }

  /** Whether it buys to eat, not to sell or make something of it. */
  public boolean isRetail() {
    return this == RETAIL || this == SHOW;
  }
}
