package org.barreltally.stock.rounds;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** The address names a counting round that there is not. */
public final class UnknownRound extends Refusal {
  public UnknownRound(UUID id) {
    super(
        Kind.NOT_FOUND,
        "unknown-round",
        "No such counting round",
        "There is no counting round " + id + ". List them at /api/stock/count-rounds.");
  }
}
