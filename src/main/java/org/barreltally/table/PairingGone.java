package org.barreltally.table;

import org.barreltally.refusal.Refusal;

/** The code was used, is too old, or never was. */
public final class PairingGone extends Refusal {

  public PairingGone() {
    super(
        Kind.RULE,
        "pairing-gone",
        "This code pairs no phone",
        "It was used, is older than "
            + Phones.MINUTES_TO_PAIR
            + " minutes, or was mistyped. Let the owner make a new one on the page about phones.",
        "code");
  }
}
