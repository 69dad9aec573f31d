/**
 * Steady-state data reconciliation of any network of flows: which values balance at every node and
 * lie nearest to what was measured, and which measurement does not fit the others. Pure reckoning;
 * knows no book.
 */
package org.barreltally.reconciliation.flows;
