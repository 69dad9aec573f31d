package org.barreltally.shows.plan;

import java.util.List;

/**
 * The log-likelihood of a gamma–Poisson rate given counts of which some are "at least so many": an
 * exact count enters with the logarithm of its probability, a sold-out one with that of the
 * survival function. Weights multiply the terms (local likelihood: Tibshirani and Hastie, Journal
 * of the American Statistical Association 82 (1987) 559; from memory).
 *
 * <p>Terms in the shape alone are summed up once per shape and shared by all counts, so one value
 * costs one logarithm per exact count, and a short continued fraction more where it sold out.
 */
final class CensoredLikelihood {

  private final CensoredCount[] counts;
  private final double[] logExposure;
  private final double[] risingLog; // at k: ln of shape (shape + 1) … (shape + k - 1)
  private final double[] factorialLog;

  CensoredLikelihood(List<CensoredCount> counts) {
    this.counts = counts.stream().filter(CensoredCount::tells).toArray(CensoredCount[]::new);
    logExposure =
        counts.stream()
            .filter(CensoredCount::tells)
            .mapToDouble(c -> Math.log(c.exposure()))
            .toArray();
    int most = (int) counts.stream().mapToLong(CensoredCount::pieces).max().orElse(0);
    risingLog = new double[most + 1];
    factorialLog = new double[most + 1];
    for (int k = 1; k <= most; k++) {
      factorialLog[k] = factorialLog[k - 1] + Math.log(k);
    }
  }

  /**
   * @param mean pieces per unit of exposure, above 0
   * @param shape above 0
   */
  double at(double mean, double shape) {
    for (int k = 1; k < risingLog.length; k++) {
      risingLog[k] = risingLog[k - 1] + Math.log(shape + k - 1);
    }
    double logMean = Math.log(mean);
    double logShape = Math.log(shape);
    double sum = 0;
    for (int n = 0; n < counts.length; n++) {
      CensoredCount count = counts[n];
      int pieces = (int) count.pieces();
      double expected = mean * count.exposure();
      double logBoth = Math.log(shape + expected);
      double exactly =
          risingLog[pieces]
              - factorialLog[pieces]
              - shape * (logBoth - logShape)
              - pieces * (logBoth - logMean - logExposure[n]);
      sum +=
          count.weight()
              * (count.soldOut()
                  ? UpperTail.logAtLeast(pieces, shape, expected, exactly)
                  : exactly);
    }
    return sum;
  }
}
