package org.barreltally.shows.plan;

/** How many pieces would be bought if enough were there; whole numbers from 0. */
public interface Demand {

  /** The expected number, pieces. */
  double mean();

  /** The probability that at least so many are wanted; 1 for 0 and below. */
  double atLeast(long pieces);

  /** The probability that at most so many are wanted. */
  default double atMost(long pieces) {
    return 1 - atLeast(pieces + 1);
  }

  /**
   * The least number of pieces that meets demand with a probability.
   *
   * @param probability 0 to under 1
   */
  default long quantile(double probability) {
    if (!(probability >= 0 && probability < 1)) {
      throw new IllegalArgumentException("probability: " + probability);
    }
    // A ratio of counts or prices may miss a step of the distribution by its last binary digit.
    double reached = probability - 1e-12;
    long high = 1;
    while (atMost(high) < reached) {
      high *= 2;
    }
    long low = -1; // atMost(low) does not reach it
    while (high - low > 1) {
      long middle = (low + high) / 2;
      if (atMost(middle) >= reached) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }
}
