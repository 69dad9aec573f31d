package org.barreltally.settings;

import java.util.Locale;

/** What happens to a run that needs more supplies than the book has. */
public enum SupplyShortage {
  WARN,
  REFUSE;

  /** {@code warn, refuse}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }
}
