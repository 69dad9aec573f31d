package org.barreltally.reconciliation.flows;

import java.util.List;

/**
 * A network reconciled.
 *
 * @param critical what a standardised adjustment exceeds once in twenty by chance, for as many
 *     tests as there are (Šidák); null if nothing can be checked
 * @param suspects the likeliest first
 */
public record Reconciled(
    List<ReconciledFlow> flows,
    List<ReconciledNode> nodes,
    GlobalTest globalTest,
    Double critical,
    List<Suspect> suspects) {

  public ReconciledFlow flow(String name) {
    return flows.stream().filter(each -> each.flow().name().equals(name)).findFirst().orElseThrow();
  }
}
