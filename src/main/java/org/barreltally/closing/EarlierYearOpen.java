package org.barreltally.closing;

import org.barreltally.refusal.Refusal;

/** A year was to be closed before an earlier one that has movements. */
public final class EarlierYearOpen extends Refusal {
  public EarlierYearOpen(int year, int earlier) {
    super(
        Kind.CONFLICT,
        "earlier-year-open",
        "An earlier year is open",
        "%d has movements and is open. Close it before %d.".formatted(earlier, year));
  }
}
