package org.barreltally.reconciliation.flows;

import org.barreltally.refusal.Refusal;

/** No flow of a network was measured. */
public final class NothingMeasured extends Refusal {
  public NothingMeasured() {
    super(
        Kind.INVALID,
        "nothing-measured",
        "Nothing was measured",
        "No flow has a measured value. Give at least one.",
        "flows");
  }
}
