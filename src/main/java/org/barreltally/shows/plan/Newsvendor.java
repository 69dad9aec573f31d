package org.barreltally.shows.plan;

/**
 * The newsvendor rule: take the least number that meets demand with the critical ratio, for one
 * piece more would be expected to cost more than it brings (Arrow, Harris and Marschak,
 * Econometrica 19 (1951) 250; from memory).
 */
public final class Newsvendor {

  /** Nobody takes pieces for a demand seen less than once in a thousand shows. */
  static final double HIGHEST_RATIO = 0.999;

  private Newsvendor() {}

  /** How many pieces to take where nothing is scarce. */
  public static long quantity(Demand demand, Costs costs) {
    return demand.quantile(Math.min(costs.criticalRatio(), HIGHEST_RATIO));
  }
}
