package org.barreltally.settings;

import java.util.Locale;

/** In which units the maker thinks; papers show that one first. */
public enum UnitHabit {
  US,
  METRIC;

  /** {@code us, metric}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }
}
