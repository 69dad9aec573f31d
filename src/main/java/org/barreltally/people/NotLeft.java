package org.barreltally.people;

import org.barreltally.refusal.Refusal;

/** Names are removed of those only who no longer sign in. */
public final class NotLeft extends Refusal {
  NotLeft(String name) {
    super(
        Kind.CONFLICT,
        "not-left",
        "They still sign in",
        name + " still signs in by that name. Let them leave first, then remove the name.");
  }
}
