package org.barreltally.pricing;

import org.barreltally.refusal.Refusal;

/** The list was replaced or withdrawn since the writer read it, as its If-Match tells. */
public final class PriceListChanged extends Refusal {
  public PriceListChanged(PriceList list) {
    super(
        Kind.STALE,
        "price-list-changed",
        "It changed meanwhile",
        "“%s”, version %d, was replaced or withdrawn since you read it. Read it again and say what still applies."
            .formatted(list.name(), list.version()));
  }
}
