package org.barreltally.shows.plan;

import java.util.random.RandomGenerator;
import org.hipparchus.distribution.continuous.GammaDistribution;

/** Seeded demand, by inverting the gamma distribution and counting out a Poisson process. */
final class Dice {

  private Dice() {}

  static long negativeBinomial(RandomGenerator random, double shape, double mean) {
    return poisson(random, gamma(random, shape, mean));
  }

  static double gamma(RandomGenerator random, double shape, double mean) {
    return new GammaDistribution(shape, mean / shape)
        .inverseCumulativeProbability(random.nextDouble());
  }

  static long poisson(RandomGenerator random, double mean) {
    long events = -1;
    for (double time = 0; time <= mean; time -= Math.log(1 - random.nextDouble())) {
      events++;
    }
    return events;
  }
}
