package org.barreltally.shows.plan;

import org.barreltally.refusal.Refusal;

/** The show has no tables to set jars on, so nobody can say what they show. */
public final class NoTables extends Refusal {
  public NoTables(String show) {
    super(
        Kind.RULE,
        "no-tables",
        "No tables are known",
        "%s has no tables yet, so there is no telling how many jars they show. Give length, depth and tiers of each under booth.tables of the show."
            .formatted(show),
        "booth.tables");
  }
}
