package org.barreltally.shows;

import org.barreltally.refusal.Refusal;

/** Jars were to go from one table to another of a show that is not on at the same time. */
public final class DaysApart extends Refusal {
  public DaysApart(Show from, Show to) {
    super(
        Kind.CONFLICT,
        "days-apart",
        "The shows are not on the same day",
        "%s and %s share no day, so no jars went from table to table. Count them back and pack them out."
            .formatted(from.words(), to.words()),
        "to");
  }
}
