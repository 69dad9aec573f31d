package org.barreltally.gifts;

import org.barreltally.refusal.Refusal;

/** People were to be removed from an order whose parcels are still on their way. */
public final class NotResolved extends Refusal {
  public NotResolved() {
    super(
        Kind.CONFLICT,
        "not-resolved",
        "Not all have got their boxes",
        "Names and addresses are needed until every recipient is delivered or cancelled.");
  }
}
