package org.barreltally.pricing;

import java.util.List;

/**
 * Tells what was taken for goods in a year of the book. Implemented where goods are sold. Only
 * movements booked in the year count, so that the answer for a closed year never changes.
 */
public interface TakingsOfYear {

  /**
   * What a channel took.
   *
   * @param channel for example {@code farm}
   */
  record Taken(String channel, Money amount) {}

  /** Sold in the year, less what was taken back or refunded in it, by channel and currency. */
  List<Taken> of(int year);
}
