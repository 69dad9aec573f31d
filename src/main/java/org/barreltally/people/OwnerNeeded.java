package org.barreltally.people;

import org.barreltally.refusal.Refusal;

/** The change would leave nobody who may set up the farm. */
public final class OwnerNeeded extends Refusal {

  OwnerNeeded(String name, String field) {
    super(
        Kind.CONFLICT,
        "owner-needed",
        "Somebody has to stay owner",
        name + " is the only owner who signs in. Make somebody else owner first.",
        field);
  }
}
