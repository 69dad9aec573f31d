package org.barreltally.reconciliation.flows;

import org.barreltally.refusal.Refusal;

/** A flow ends at the node where it begins. */
public final class FlowToItself extends Refusal {
  public FlowToItself(String flow, String node, String field) {
    super(
        Kind.INVALID,
        "flow-to-itself",
        "A flow leads back to where it begins",
        shown(flow)
            + " leaves "
            + shown(node)
            + " and comes back to it, which balances whatever it is. Leave it out.",
        field);
  }
}
