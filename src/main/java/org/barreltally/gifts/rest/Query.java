package org.barreltally.gifts.rest;

import java.time.DateTimeException;
import java.time.LocalDate;
import org.barreltally.refusal.InvalidField;

/** Reads what stands in a query; null stays null. */
final class Query {

  private Query() {}

  static LocalDate day(String text, String name) {
    try {
      return text == null ? null : LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw new InvalidField(name, "Give a date such as 2026-12-15.");
    }
  }

  static boolean yes(String text, String name) {
    if (text == null || "false".equals(text)) {
      return false;
    }
    if ("true".equals(text)) {
      return true;
    }
    throw new InvalidField(name, "Give true or false.");
  }
}
