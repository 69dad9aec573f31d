package org.barreltally.documents.rest;

import java.math.BigDecimal;
import org.barreltally.refusal.InvalidField;

/** Reads numbers of a query, refusing by name what cannot be read; null stays null. */
final class Asked {

  private Asked() {}

  static Integer whole(String text, String name) {
    if (text == null) {
      return null;
    }
    if (!text.matches("-?[0-9]{1,9}")) {
      throw new InvalidField(name, "Give a whole number, or leave it out.");
    }
    return Integer.valueOf(text);
  }

  static BigDecimal decimal(String text, String name) {
    if (text == null) {
      return null;
    }
    if (!text.matches("-?[0-9]{1,9}(\\.[0-9]{1,6})?")) {
      throw new InvalidField(name, "Give a number such as 15.9, or leave it out.");
    }
    return new BigDecimal(text);
  }
}
