package org.barreltally.shows.settling;

import org.barreltally.refusal.Refusal;
import org.barreltally.shows.Show;

/** A show was to be settled before its jars were counted back. */
public final class NotCountedYet extends Refusal {
  public NotCountedYet(Show show) {
    super(
        Kind.CONFLICT,
        "not-counted-yet",
        "Count it back first",
        "%s is %s. Count its jars home by back, then settle it; until then read how it stands."
            .formatted(show.words(), show.state().code()));
  }
}
