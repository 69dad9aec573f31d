package org.barreltally.shops;

import java.util.Locale;

/** Who bears what is missing or broken in a shop, by the terms agreed with it. */
public enum MissingRule {
  /** The shop pays for it as if it were sold. */
  SHOP,
  /** The maker does without it. */
  MAKER,
  /** The shop pays a part of it, half unless another part was agreed. */
  SPLIT;

  /** {@code shop, maker, split}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The rule with this code, which the database guarantees to exist. */
  public static MissingRule of(String code) {
    return valueOf(code.toUpperCase(Locale.ROOT));
  }
}
