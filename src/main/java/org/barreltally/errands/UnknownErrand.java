package org.barreltally.errands;

import org.barreltally.refusal.Refusal;

/** There is no such errand, it was forgotten, or somebody else asked for it. */
public final class UnknownErrand extends Refusal {

  public UnknownErrand() {
    super(
        Kind.NOT_FOUND,
        "errand-unknown",
        "No such work",
        "No work of yours stands here. Results are kept for two days; ask for it again.");
  }
}
