package org.barreltally.shows.plan;

import java.util.List;

/**
 * The log-likelihood of a gamma–Poisson rate given counts of which some are "at least so many": an
 * exact count enters with the logarithm of its probability, a sold-out one with that of the
 * survival function. Weights multiply the terms (local likelihood: Tibshirani and Hastie, Journal
 * of the American Statistical Association 82 (1987) 559; from memory).
 *
 * <p>Terms in the shape alone are summed up once per shape and shared by all counts, so one value
 * costs two logarithms per count.
 */
final class CensoredLikelihood {

  private final List<CensoredCount> counts;
  private final double constant;
  private final double[] risingLog; // at k: ln of shape (shape + 1) … (shape + k - 1)
  private final double[] factorialLog;

  CensoredLikelihood(List<CensoredCount> counts) {
    this.counts = counts.stream().filter(CensoredCount::tells).toList();
    int most = (int) this.counts.stream().mapToLong(CensoredCount::pieces).max().orElse(0);
    risingLog = new double[most + 1];
    factorialLog = new double[most + 1];
    for (int k = 1; k <= most; k++) {
      factorialLog[k] = factorialLog[k - 1] + Math.log(k);
    }
    constant =
        this.counts.stream()
            .filter(c -> !c.soldOut())
            .mapToDouble(c -> -c.weight() * factorialLog[(int) c.pieces()])
            .sum();
  }

  /**
   * @param mean pieces per unit of exposure, above 0
   * @param shape above 0
   */
  double at(double mean, double shape) {
    for (int k = 1; k < risingLog.length; k++) {
      risingLog[k] = risingLog[k - 1] + Math.log(shape + k - 1);
    }
    double sum = constant;
    for (CensoredCount count : counts) {
      double expected = mean * count.exposure();
      sum +=
          count.weight()
              * (count.soldOut()
                  ? Math.log(atLeast((int) count.pieces(), shape, expected))
                  : exactly((int) count.pieces(), shape, expected));
    }
    return sum;
  }

  private double exactly(int pieces, double shape, double expected) {
    return risingLog[pieces]
        - shape * Math.log1p(expected / shape)
        - pieces * Math.log1p(shape / expected);
  }

  /** Summed from the tail on its side of the mean, so that nothing cancels. */
  private double atLeast(int pieces, double shape, double expected) {
    double ratio = expected / (shape + expected);
    double term = Math.exp(exactly(pieces, shape, expected) - factorialLog[pieces]);
    double sum = 0;
    if (pieces > expected) {
      for (long k = pieces; term > sum * 1e-16 && term > Double.MIN_NORMAL; k++) {
        sum += term;
        term *= ratio * (shape + k) / (k + 1);
      }
      return Math.max(sum, Double.MIN_NORMAL);
    }
    for (int k = pieces; k > 0 && term > sum * 1e-17; k--) {
      term *= k / (ratio * (shape + k - 1));
      sum += term;
    }
    return 1 - Math.min(sum, 1 - 1e-16);
  }
}
