package org.barreltally.ledger;

import org.barreltally.refusal.Refusal;

/** More of a reservation was to be taken or released than is still open. */
public final class MoreThanReserved extends Refusal {
  public MoreThanReserved(String container, String grade, long open, long wanted) {
    super(
        Kind.CONFLICT,
        "more-than-reserved",
        "Not that much is reserved",
        "Of %s %s only %d are still reserved; %d cannot be taken or released."
            .formatted(container, grade, open, wanted));
  }
}
