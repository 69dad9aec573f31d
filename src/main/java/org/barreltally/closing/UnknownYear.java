package org.barreltally.closing;

import org.barreltally.refusal.Refusal;

/** The address names a year of which the book has nothing. */
public final class UnknownYear extends Refusal {
  public UnknownYear(int year) {
    super(
        Kind.NOT_FOUND,
        "unknown-year",
        "Nothing of that year",
        "The book has nothing in " + year + ". Its years stand at /api/years.");
  }
}
