package org.barreltally.reconciliation;

import java.util.Map;
import org.barreltally.reconciliation.flows.FlowNetwork;

/**
 * A season as a network of flows of syrup, in grams.
 *
 * @param how by the name of a flow, how it is known
 */
public record SeasonNetwork(int season, FlowNetwork network, Map<String, How> how) {}
