package org.barreltally.pricing;

import org.barreltally.refusal.Refusal;

/** A list was to be withdrawn that was withdrawn before. */
public final class AlreadyWithdrawn extends Refusal {
  public AlreadyWithdrawn(PriceList list) {
    super(
        Kind.CONFLICT,
        "already-withdrawn",
        "It was withdrawn before",
        "“%s”, version %d, was withdrawn before. Nothing is left to do."
            .formatted(list.name(), list.version()));
  }
}
