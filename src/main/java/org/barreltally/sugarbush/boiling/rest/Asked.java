package org.barreltally.sugarbush.boiling.rest;

import java.math.BigDecimal;
import java.util.UUID;
import org.barreltally.refusal.InvalidField;
import org.barreltally.web.PageRequest;

/** What addresses of the log ask for, read from their query. */
final class Asked {

  private static final int LONGEST = 20;

  private Asked() {}

  /** A season, or null where none was given. */
  static Integer season(String text) {
    if (text == null) {
      return null;
    }
    if (!text.matches("[0-9]{4}") || text.compareTo("1900") < 0 || text.compareTo("2200") > 0) {
      throw new InvalidField("season", "Give the year of the sap, for example 2026.");
    }
    return Integer.valueOf(text);
  }

  /** A number, or null where none was given. */
  static BigDecimal number(String text, String field) {
    if (text == null) {
      return null;
    }
    if (text.length() > LONGEST || !text.matches("[0-9]+(\\.[0-9]+)?")) {
      throw new InvalidField(field, "Give a number with a decimal point, for example 66.9.");
    }
    return new BigDecimal(text);
  }

  static UUID after(PageRequest page) {
    return page.after(UUID::fromString).orElse(null);
  }
}
