package org.barreltally.shows.plan;

/**
 * What one past show tells of an item's demand.
 *
 * @param pieces sold, 0 or more
 * @param soldOut true where at least so many were wanted; false where exactly so many were
 * @param exposure how much show it was (visitors or days), above 0
 * @param weight how much it counts, above 0; 1 for a show just like the one to come
 */
public record CensoredCount(long pieces, boolean soldOut, double exposure, double weight) {

  public CensoredCount {
    if (pieces < 0 || !(exposure > 0) || !(weight > 0)) {
      throw new IllegalArgumentException(pieces + " at " + exposure + ", weight " + weight);
    }
  }

  /** Whether it tells anything: having sold out of nothing does not. */
  boolean tells() {
    return !soldOut || pieces > 0;
  }
}
