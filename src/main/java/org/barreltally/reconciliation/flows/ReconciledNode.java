package org.barreltally.reconciliation.flows;

/**
 * How a node balances by what was measured.
 *
 * @param imbalance measured in less measured out; null if a flow of it was not measured
 * @param u standard uncertainty of the imbalance; null likewise
 * @param standardized the imbalance by its standard uncertainty; null likewise
 */
public record ReconciledNode(String name, Double imbalance, Double u, Double standardized) {}
