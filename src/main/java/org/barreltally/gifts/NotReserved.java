package org.barreltally.gifts;

import org.barreltally.refusal.Refusal;

/** Jars were to be picked that were never promised. */
public final class NotReserved extends Refusal {
  public NotReserved(int n) {
    super(
        Kind.CONFLICT,
        "not-reserved",
        "Not reserved yet",
        "The jars of recipient " + n + " are not reserved. Reserve the order first.");
  }
}
