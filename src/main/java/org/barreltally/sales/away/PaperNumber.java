package org.barreltally.sales.away;

import java.time.LocalDate;
import java.util.Locale;

/**
 * The number of an invoice or receipt. They run without gaps in each year, by the day of recording.
 *
 * @param number from 1
 */
public record PaperNumber(int year, int number, LocalDate issuedOn) {

  /** {@code 2026-0007}. */
  public String text() {
    return String.format(Locale.ROOT, "%d-%04d", year, number);
  }
}
