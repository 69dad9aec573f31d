package org.barreltally.web;

import java.time.DateTimeException;
import java.time.LocalDate;
import org.barreltally.refusal.InvalidField;

/** A day in the query of an address. */
public final class AskedDay {

  private AskedDay() {}

  /**
   * The day, or null where none was given.
   *
   * @throws InvalidField naming the parameter if it is no day
   */
  public static LocalDate of(String text, String name) {
    try {
      return text == null ? null : LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw new InvalidField(name, "Give a date such as 2026-03-14, or leave it out.");
    }
  }
}
