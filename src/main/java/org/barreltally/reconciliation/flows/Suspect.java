package org.barreltally.reconciliation.flows;

import java.util.List;

/**
 * Something that, taken for wrong, makes the rest agree best; after those suspected before it.
 *
 * @param standardized how far it is off, in standard uncertainties; above the critical value
 * @param readings all that explain it equally well: no measurement tells them apart
 * @param after χ² of the rest when it is set aside, with those before it
 */
public record Suspect(double standardized, List<Reading> readings, GlobalTest after) {

  /**
   * One way to read it.
   *
   * @param flow whose measured value is too high by the error (below zero: too low); null for a
   *     node
   * @param node into which by the error more came than is told to have left (below zero: less);
   *     null for a flow
   * @param error estimated together with those of the other suspects, in the unit of the flows
   * @param u its standard uncertainty
   */
  public record Reading(String flow, String node, double error, double u) {}

  /** Whether one of the ways to read it is this flow. */
  public boolean names(String flow) {
    return readings.stream().anyMatch(reading -> flow.equals(reading.flow()));
  }
}
