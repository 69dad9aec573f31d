package org.barreltally.cost;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** No cost has that id. */
public final class UnknownCost extends Refusal {
  public UnknownCost(UUID id) {
    super(
        Kind.NOT_FOUND,
        "unknown-cost",
        "No such cost",
        "There is no cost " + id + ". List them at /api/costs.");
  }
}
