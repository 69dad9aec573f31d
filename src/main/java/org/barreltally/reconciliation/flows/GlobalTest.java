package org.barreltally.reconciliation.flows;

import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * Whether all measurements together agree with each other within their uncertainties.
 *
 * @param chiSquared the least sum of squared adjustments, each by its standard uncertainty
 * @param degreesOfFreedom independent balances that check the measurements
 * @param critical what χ² exceeds once in twenty if nothing is wrong; null without any check
 */
public record GlobalTest(double chiSquared, int degreesOfFreedom, Double critical) {

  /** The tests warn wrongly once in twenty. */
  public static final double LEVEL = 0.05;

  static GlobalTest of(double chiSquared, int degreesOfFreedom) {
    return new GlobalTest(
        chiSquared,
        degreesOfFreedom,
        degreesOfFreedom == 0
            ? null
            : new ChiSquaredDistribution(degreesOfFreedom).inverseCumulativeProbability(1 - LEVEL));
  }

  public boolean passed() {
    return critical == null || chiSquared <= critical;
  }
}
