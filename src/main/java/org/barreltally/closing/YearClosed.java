package org.barreltally.closing;

import org.barreltally.refusal.Refusal;

/** A year was to be closed that is closed. */
public final class YearClosed extends Refusal {
  public YearClosed(int year, int lastClosed) {
    super(
        Kind.CONFLICT,
        "year-closed",
        "This year is closed already",
        "The book is closed up to %d, so %d is closed and stays so. Take a mistake back: that is booked in the open year."
            .formatted(lastClosed, year));
  }
}
