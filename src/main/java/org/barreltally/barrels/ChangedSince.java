package org.barreltally.barrels;

import org.barreltally.refusal.Refusal;

/** The barrel changed since the writer read it, as its If-Match tells. */
public final class ChangedSince extends Refusal {
  public ChangedSince(String tag) {
    super(
        Kind.STALE,
        "changed-since",
        "It changed meanwhile",
        "Somebody changed "
            + tag
            + " since you read it. Read it again and say what still applies.");
  }
}
