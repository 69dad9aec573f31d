package org.barreltally.ledger;

import org.barreltally.refusal.Refusal;

/** Something is said to have happened that cannot have happened yet. */
public final class InTheFuture extends Refusal {
  public InTheFuture(String field, Object said, Object now) {
    super(
        Kind.INVALID,
        "in-the-future",
        "That day has not come yet",
        "What happened cannot lie in the future: %s was given and it is %s. Give the day it happened."
            .formatted(said, now),
        field);
  }
}
