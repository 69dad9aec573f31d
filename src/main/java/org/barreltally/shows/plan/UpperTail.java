package org.barreltally.shows.plan;

import org.hipparchus.util.ContinuedFraction;

/**
 * The probability of at least so many pieces, got from the probability of exactly so many: the
 * regularized incomplete beta function {@code I_x(pieces, shape)} without its leading factor, which
 * is that very probability (continued fraction of NIST's Digital Library of Mathematical Functions,
 * 8.17.22).
 */
final class UpperTail {

  private static final double ENOUGH = 1e-15;
  private static final int MOST_TERMS = 100_000;

  private UpperTail() {}

  /**
   * The natural logarithm of the probability of at least so many.
   *
   * @param pieces above 0, also broken numbers
   * @param logExactly the logarithm of the probability of exactly so many
   */
  static double logAtLeast(double pieces, double shape, double expected, double logExactly) {
    double x = expected / (shape + expected);
    if (x <= (pieces + 1) / (pieces + shape + 2)) {
      return logExactly - Math.log(fraction(x, pieces, shape));
    }
    double below = Math.exp(logExactly) * pieces / shape / fraction(1 - x, shape, pieces);
    return Math.log1p(-Math.min(below, 1 - 1e-16));
  }

  private static double fraction(double x, double a, double b) {
    return new ContinuedFraction() {
      @Override
      protected double getA(int n, double at) {
        return 1;
      }

      @Override
      protected double getB(int n, double at) {
        int m = n / 2;
        return n % 2 == 0
            ? m * (b - m) * at / ((a + 2 * m - 1) * (a + 2 * m))
            : -((a + m) * (a + b + m) * at) / ((a + 2 * m) * (a + 2 * m + 1));
      }
    }.evaluate(x, ENOUGH, MOST_TERMS);
  }
}
