package org.barreltally.stock;

import org.barreltally.refusal.Refusal;

/** The same lot and size stands in two lines of one count. */
public final class CountedTwice extends Refusal {
  public CountedTwice(String lot, String container, String field) {
    super(
        Kind.INVALID,
        "counted-twice",
        "Two lines for the same jars",
        "%s of lot %s is in an earlier line too. Add the two up into one line."
            .formatted(container, lot),
        field);
  }
}
