package org.barreltally.sugarbush;

import org.barreltally.refusal.Refusal;

/** No lease of the season and no bush of one's own has that name. */
public final class UnknownBush extends Refusal {

  /** Named in a record. */
  public UnknownBush(String name, int season, String field) {
    super(
        Kind.RULE,
        "unknown-bush",
        "No such bush",
        "\"%s\" is neither leased for %d nor a bush of your own. List them at /api/bushes; agree a lease, or make your own known there."
            .formatted(shown(name), season),
        field);
  }

  /** Named by an address. */
  public UnknownBush(String name) {
    super(
        Kind.NOT_FOUND,
        "unknown-bush",
        "No such bush",
        "There is no bush \"%s\" of your own. List them at /api/bushes; taps of leased trees are counted with the lease."
            .formatted(shown(name)));
  }
}
