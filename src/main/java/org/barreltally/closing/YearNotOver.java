package org.barreltally.closing;

import org.barreltally.refusal.Refusal;

/** A year was to be closed that is not over. */
public final class YearNotOver extends Refusal {
  public YearNotOver(int year, int thisYear) {
    super(
        Kind.CONFLICT,
        "year-not-over",
        "This year is not over",
        "It is %d; only years before it can be closed, not %d.".formatted(thisYear, year));
  }
}
