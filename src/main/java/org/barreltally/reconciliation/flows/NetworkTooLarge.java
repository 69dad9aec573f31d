package org.barreltally.reconciliation.flows;

import org.barreltally.refusal.Refusal;

/** A network has more nodes or flows than are reckoned at once. */
public final class NetworkTooLarge extends Refusal {
  public NetworkTooLarge(String field, int count) {
    super(
        Kind.INVALID,
        "network-too-large",
        "Too much at once",
        "%,d %s are more than the %,d that are reckoned at once. Put small ones together."
            .formatted(count, field, FlowNetwork.MOST),
        field);
  }
}
