package org.barreltally.people;

import org.barreltally.refusal.Refusal;

/** A code was to be confirmed, and no setting up of codes waits for one. */
public final class NoCodesBegun extends Refusal {

  NoCodesBegun() {
    super(
        Kind.CONFLICT,
        "no-codes-begun",
        "No codes are being set up",
        "Begin with setting up codes; then confirm the first code that the phone shows.");
  }
}
