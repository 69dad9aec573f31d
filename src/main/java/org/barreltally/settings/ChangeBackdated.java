package org.barreltally.settings;

import java.time.Instant;
import org.barreltally.refusal.Refusal;

/** A setting was to change from an instant that has passed, and with it papers of that time. */
public final class ChangeBackdated extends Refusal {

  public ChangeBackdated(Instant from, Instant now) {
    super(
        Kind.RULE,
        "change-backdated",
        "A setting cannot change the past",
        "The change would hold from "
            + from
            + ", which is before now ("
            + now
            + "), and change papers of that time. Leave validFrom out to change it from now on.",
        "validFrom");
  }
}
