package org.barreltally.reconciliation.flows;

import org.barreltally.refusal.Refusal;

/** A flow names a node that is not among the nodes. */
public final class UnknownNode extends Refusal {
  public UnknownNode(String node, String field) {
    super(
        Kind.INVALID,
        "unknown-node",
        "No such node",
        "No node is called " + shown(node) + ". Add it to the nodes, or mend the name.",
        field);
  }
}
