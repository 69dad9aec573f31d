package org.barreltally.supplies;

import org.barreltally.refusal.Refusal;

/** The address names a supply that the book does not know. */
public final class UnknownSupply extends Refusal {
  public UnknownSupply(String code) {
    super(
        Kind.NOT_FOUND,
        "unknown-supply",
        "No such supply",
        "There is no supply “" + code + "”. List them at /api/supplies, or add it there.");
  }
}
