package org.barreltally.reconciliation;

import org.barreltally.reconciliation.flows.Reconciled;

/**
 * A season reconciled.
 *
 * @param network null if nothing in the season was measured
 * @param found null likewise
 */
public record SeasonReconciled(int season, SeasonNetwork network, Reconciled found) {}
