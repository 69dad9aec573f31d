package org.barreltally.shows.plan;

/**
 * What is believed of a rate of demand: a gamma distribution with this shape and rate, so that its
 * mean is {@code shape / rate} pieces per unit of exposure. Counts of known exposure update it.
 *
 * @param shape above 0
 * @param rate in units of exposure, above 0
 */
public record GammaPoisson(double shape, double rate) {

  public GammaPoisson {
    if (!(shape > 0 && rate > 0 && Double.isFinite(shape) && Double.isFinite(rate))) {
      throw new IllegalArgumentException("shape " + shape + ", rate " + rate);
    }
  }

  /** The belief with this mean, in pieces per unit of exposure, and this shape. */
  public static GammaPoisson ofMean(double mean, double shape) {
    return new GammaPoisson(shape, shape / mean);
  }

  /** The expected pieces per unit of exposure. */
  public double mean() {
    return shape / rate;
  }

  /** The demand to expect at an exposure. */
  public NegativeBinomial demand(double exposure) {
    return new NegativeBinomial(shape, mean() * exposure);
  }

  /** After so many pieces were wanted at an exposure: the conjugate update. */
  public GammaPoisson after(double pieces, double exposure) {
    return new GammaPoisson(shape + pieces, rate + exposure);
  }

  /**
   * After an item sold out, so that at least so many were wanted. The exact belief is no gamma
   * distribution any more; the one with the same first two moments takes its place (Berk, Gürler
   * and Levine, European Journal of Operational Research 182 (2007) 256). The moments are exact:
   * {@code E[λ | D ≥ n] = shape/rate · S(shape + 1)/S(shape)} with {@code S(s)} the probability of
   * at least n pieces under shape s, and so on for the square; from one shape to the next by NIST's
   * Digital Library of Mathematical Functions, 8.17.21.
   */
  public GammaPoisson afterAtLeast(double pieces, double exposure) {
    if (pieces <= 0 || exposure <= 0) {
      return this; // at least none: that tells nothing
    }
    NegativeBinomial demand = demand(exposure);
    double logExactly = demand.logProbability(pieces);
    double none = Math.exp(UpperTail.logAtLeast(pieces, shape, demand.mean(), logExactly));
    double more = Math.exp(logExactly) * pieces / shape;
    double one = none + more;
    double two = one + more * (shape + pieces) / (shape + 1) * rate / (rate + exposure);
    if (!(none > Double.MIN_NORMAL)) {
      return after(pieces, exposure); // unheard of: as if exactly so many, which is the least of it
    }
    double first = shape / rate * one / none;
    double second = shape * (shape + 1) / (rate * rate) * two / none;
    double variance = second - first * first;
    if (!(variance > first * first * 1e-12)) {
      return after(pieces, exposure); // lost to rounding, with a belief far narrower than any show
    }
    return new GammaPoisson(first * first / variance, first / variance);
  }
}
