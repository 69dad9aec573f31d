package org.barreltally.pricing;

import java.util.Locale;

/** How goods are told apart for tax. What belongs where, the owner decides with a tax preparer. */
public enum ProductClass {
  FOOD,
  GIFT,
  OTHER;

  /** {@code food, gift, other}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The class with this code, which the database guarantees to exist. */
  public static ProductClass of(String code) {
    return valueOf(code.toUpperCase(Locale.ROOT));
  }
}
