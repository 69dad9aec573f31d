package org.barreltally.reconciliation.flows;

import org.barreltally.refusal.Refusal;

/** Two nodes, or two flows, have one name. */
public final class NamedTwice extends Refusal {
  public NamedTwice(String name, String field) {
    super(
        Kind.INVALID,
        "named-twice",
        "A name is there twice",
        shown(name) + " is named twice. Give each its own name.",
        field);
  }
}
