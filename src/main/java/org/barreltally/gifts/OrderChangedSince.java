package org.barreltally.gifts;

import org.barreltally.refusal.Refusal;

/** The order was changed by somebody else since it was read. */
public final class OrderChangedSince extends Refusal {
  public OrderChangedSince() {
    super(
        Kind.STALE,
        "changed-since",
        "The order changed since you read it",
        "Somebody else changed this gift order. Read it again, then decide.");
  }
}
