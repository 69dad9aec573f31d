package org.barreltally.stock.rounds;

import org.barreltally.refusal.Refusal;

/** The second count of a round was made by the first counter. */
public final class SameCounter extends Refusal {
  public SameCounter(String by) {
    super(
        Kind.RULE,
        "same-counter",
        "Two people count",
        shown(by) + " counted first. Let somebody else count without seeing those figures.",
        "by");
  }
}
