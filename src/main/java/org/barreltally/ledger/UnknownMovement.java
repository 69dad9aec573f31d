package org.barreltally.ledger;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** No movement has that id. */
public final class UnknownMovement extends Refusal {
  public UnknownMovement(UUID id) {
    super(
        Kind.NOT_FOUND,
        "unknown-movement",
        "No such movement",
        "There is no movement " + id + ". List them at /api/movements.");
  }
}
