package org.barreltally.settings;

import java.util.Locale;

/** By which rules net contents are checked; the two are never mixed. */
public enum NetContentsRegime {
  EU,
  US;

  /** {@code eu, us}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }
}
