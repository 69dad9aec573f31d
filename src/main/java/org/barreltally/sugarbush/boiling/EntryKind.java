package org.barreltally.sugarbush.boiling;

import java.util.Locale;

/** What stands in the sugarhouse's log. */
public enum EntryKind {
  SAP,
  CONCENTRATE,
  BOIL,
  FEED,
  DRAW_OFF,
  NOTE;

  /** {@code sap, concentrate, boil, feed, draw-off, note}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The kind with that code; none is a defect. */
  public static EntryKind of(String code) {
    return valueOf(code.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
