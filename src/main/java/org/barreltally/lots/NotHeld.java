package org.barreltally.lots;

import org.barreltally.refusal.Refusal;

/** A lot was to be released that is not held. */
public final class NotHeld extends Refusal {
  public NotHeld(String lot) {
    super(
        Kind.CONFLICT,
        "not-held",
        "This lot is not held",
        "Lot " + lot + " is not held, so there is nothing to release.");
  }
}
