package org.barreltally.shows.plan;

import org.hipparchus.special.Beta;
import org.hipparchus.special.Gamma;

/**
 * Demand counted as Poisson whose rate is itself spread as a gamma distribution of this shape: the
 * negative binomial with mean {@code mean} and variance {@code mean + mean²/shape}, for shapes that
 * need not be whole (Johnson, Kemp and Kotz, Univariate Discrete Distributions, chapter 5; from
 * memory).
 *
 * @param shape above 0; the larger, the nearer to Poisson
 * @param mean pieces, above 0
 */
public record NegativeBinomial(double shape, double mean) implements Demand {

  public NegativeBinomial {
    if (!(shape > 0 && mean > 0 && Double.isFinite(shape) && Double.isFinite(mean))) {
      throw new IllegalArgumentException("shape " + shape + ", mean " + mean);
    }
  }

  /** The natural logarithm of the probability of exactly so many pieces; 0 or more. */
  public double logProbability(double pieces) {
    return Gamma.logGamma(shape + pieces)
        - Gamma.logGamma(shape)
        - Gamma.logGamma(pieces + 1)
        - shape * Math.log1p(mean / shape)
        - (pieces == 0 ? 0 : pieces * Math.log1p(shape / mean));
  }

  /** The probability of exactly so many pieces; 0 or more. */
  public double probability(long pieces) {
    return Math.exp(logProbability(pieces));
  }

  @Override
  public double atLeast(long pieces) {
    return atLeast((double) pieces);
  }

  /**
   * As {@link #atLeast(long)} through the regularized incomplete beta function, which carries it on
   * to broken numbers of pieces.
   */
  double atLeast(double pieces) {
    return pieces <= 0 ? 1 : Beta.regularizedBeta(mean / (shape + mean), pieces, shape);
  }

  @Override
  public double atMost(long pieces) {
    return pieces < 0 ? 0 : Beta.regularizedBeta(shape / (shape + mean), shape, pieces + 1.0);
  }
}
