package org.barreltally.lots;

import org.barreltally.refusal.Refusal;

/** A held lot was to be drawn, promised, printed or sent. */
public final class LotHeld extends Refusal {
  public LotHeld(String lot, String field) {
    super(
        Kind.CONFLICT,
        "lot-held",
        "This lot is held",
        "Lot " + lot + " is held. Release it with a reason first, or choose another.",
        field);
  }
}
