package org.barreltally.shows.plan;

/**
 * A fitted rate of demand over shows.
 *
 * @param mean pieces per unit of exposure
 * @param shape of the gamma distribution of the rate; the larger, the more alike the shows
 * @param logLikelihood at the fit, what was known beforehand included
 */
public record Fit(double mean, double shape, double logLikelihood) {

  /** The rate's distribution over shows: shape, and rate = shape / mean. */
  public GammaPoisson distribution() {
    return GammaPoisson.ofMean(mean, shape);
  }
}
