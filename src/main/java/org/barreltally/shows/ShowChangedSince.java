package org.barreltally.shows;

import org.barreltally.refusal.Refusal;

/** The show changed since the writer read it, as the If-Match tells. */
public final class ShowChangedSince extends Refusal {
  public ShowChangedSince(Show show) {
    super(
        Kind.STALE,
        "changed-since",
        "It changed meanwhile",
        "Somebody changed %s since you read it; it is at version %d now. Read it again and say what still applies."
            .formatted(show.words(), show.version()));
  }
}
