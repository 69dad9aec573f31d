package org.barreltally.documents.rest;

import java.math.BigDecimal;
import java.util.Arrays;
import org.barreltally.documents.Paper;
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

  /** Whether it says true; no where it is left out. */
  static boolean yes(String text, String name) {
    if (text != null && !text.equals("true") && !text.equals("false")) {
      throw new InvalidField(name, "Give true or false, or leave it out.");
    }
    return "true".equals(text);
  }

  static Paper paper(String code, String name) {
    if (code == null) {
      return null;
    }
    return Arrays.stream(Paper.values())
        .filter(paper -> paper.code().equals(code))
        .findFirst()
        .orElseThrow(() -> new InvalidField(name, "Give one of letter, a4, or leave it out."));
  }
}
