package org.barreltally.shows;

import org.barreltally.refusal.Refusal;

/** Something was to be done with a show that its state does not allow yet, or no longer. */
public final class NotThatFarYet extends Refusal {
  public NotThatFarYet(Show show, String wanted, String mend) {
    super(
        Kind.CONFLICT,
        "show-state",
        "The show is not at that point",
        "%s is %s: %s. %s".formatted(show.words(), show.state().code(), wanted, mend));
  }
}
