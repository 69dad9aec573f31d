package org.barreltally.shows.plan;

/**
 * What a wrong number of one item costs, in the farm's currency per piece.
 *
 * @param underage a buyer who finds none: the margin lost and the cost of running out; above 0
 * @param overage a piece carried there and back unsold; above 0
 */
public record Costs(double underage, double overage) {

  public Costs {
    if (!(underage > 0 && overage > 0)) {
      throw new IllegalArgumentException(underage + ", " + overage);
    }
  }

  /** The critical ratio: the probability with which demand should be met, 0 to 1. */
  public double criticalRatio() {
    return underage / (underage + overage);
  }

  /**
   * What the last of so many pieces is expected to bring. It never rises with the number.
   *
   * @param atLeast the probability that so many are wanted
   */
  public double gain(double atLeast) {
    return underage * atLeast - overage * (1 - atLeast);
  }
}
