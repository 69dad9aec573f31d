package org.barreltally.reconciliation.flows;

/**
 * A flow as the balances make it.
 *
 * @param reconciled null if neither measured nor determined by what was
 * @param u standard uncertainty of the reconciled value; null if there is none
 * @param adjustment reconciled less measured; null if nobody measured it
 * @param adjustmentU standard uncertainty of the adjustment; null if nothing checks it
 * @param standardized the adjustment by its standard uncertainty; null if nothing checks it
 * @param checked how much of the measurement's variance the others check, 0 to 1; null if nobody
 *     measured it
 * @param suspect whether it is one way to read a suspect; a flow beside a wrong one may be adjusted
 *     far without being one
 */
public record ReconciledFlow(
    Flow flow,
    Double reconciled,
    Double u,
    Double adjustment,
    Double adjustmentU,
    Double standardized,
    Double checked,
    boolean suspect) {}
