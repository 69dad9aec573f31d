package org.barreltally.people;

import org.barreltally.refusal.Refusal;

/** Codes are asked for at sign-in already; another phone is set up after they were stopped. */
public final class CodesAlreadyOn extends Refusal {

  CodesAlreadyOn() {
    super(
        Kind.CONFLICT,
        "codes-already-on",
        "Codes are asked for already",
        "Stop the codes first, then set them up with the other phone.");
  }
}
