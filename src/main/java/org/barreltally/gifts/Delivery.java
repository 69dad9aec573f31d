package org.barreltally.gifts;

import java.util.Locale;

/** How a recipient's boxes get there. */
public enum Delivery {
  POST,
  COLLECT,
  BY_HAND;

  /** {@code post, collect, by-hand}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The delivery with this code, which the database guarantees to exist. */
  public static Delivery of(String code) {
    return valueOf(code.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
