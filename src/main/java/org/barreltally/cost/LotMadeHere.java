package org.barreltally.cost;

import org.barreltally.refusal.Refusal;

/** A cost names a lot that was made of others: what it cost follows from them. */
public final class LotMadeHere extends Refusal {
  public LotMadeHere(String lot) {
    super(
        Kind.RULE,
        "lot-made-here",
        "This lot was made of others",
        "Lot %s was made of others, so its cost follows from theirs. Name a bought lot or one from opening stock, the run, or the season."
            .formatted(lot),
        "lot");
  }
}
