package org.barreltally.shows.plan;

import org.barreltally.refusal.Refusal;

/** A cost or margin below zero would make running out, or carting back, something to aim for. */
public final class NegativeCost extends Refusal {
  public NegativeCost(Object said, String field) {
    super(
        Kind.RULE,
        "negative-cost",
        "A cost is below zero",
        "%s is below zero. Give what it costs as 0 or more.".formatted(said),
        field);
  }
}
