package org.barreltally.errands;

import org.barreltally.refusal.Refusal;

/** Somebody asked for work that is not part of their role. */
public final class NotYourErrand extends Refusal {

  NotYourErrand(String kind) {
    super(
        Kind.FORBIDDEN,
        "not-your-part",
        "Not part of your role",
        "Asking for " + kind + " is not part of your role. Ask the owner.");
  }
}
