package org.barreltally.shows.plan;

/**
 * How far demand spreads, as squared coefficients of variation of its rate.
 *
 * @param between from show to show: what a show's own records can tell
 * @param within from one time to the next at the same show (weather, neighbours): what they cannot
 */
record Spread(double between, double within) {

  /** Nobody's belief is sharper than this, so that a show's own records are always heard. */
  private static final double LEAST = 1e-4;

  /**
   * Splits the spread that a fit over all shows found.
   *
   * @param shape of the fitted gamma distribution; the squared coefficient of variation is 1/shape
   * @param share of the spread that lies between shows, 0 to 1
   */
  static Spread of(double shape, double share) {
    double total = 1 / shape;
    double between = share * total;
    return new Spread(Math.max(LEAST, between), (1 + total) / (1 + between) - 1);
  }
}
