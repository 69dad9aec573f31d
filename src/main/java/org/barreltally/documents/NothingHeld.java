package org.barreltally.documents;

import org.barreltally.refusal.Refusal;

/** A hold tag was asked for a lot that is not held. */
public final class NothingHeld extends Refusal {
  NothingHeld(String lot) {
    super(
        Kind.CONFLICT,
        "not-held",
        "This lot is not held",
        "Lot " + lot + " is not held, so it needs no hold tag. Hold it with a reason first.",
        "lot");
  }
}
