package org.barreltally.reconciliation.flows;

import java.util.List;
import org.barreltally.refusal.Refusal;

/** Some nodes are joined by no flow to the others. */
public final class NetworkInParts extends Refusal {
  public NetworkInParts(List<String> part, String other) {
    super(
        Kind.INVALID,
        "network-in-parts",
        "The network falls apart",
        "No flow joins %s to %s. Reckon the parts one by one, or add the flow that joins them."
            .formatted(shown(String.join(", ", part)), shown(other)),
        "nodes");
  }
}
