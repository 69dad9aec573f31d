package org.barreltally.closing;

import java.util.List;
import org.barreltally.pricing.Money;

/**
 * What the book says of a year: what stood at its end, what went where in it, and what was taken.
 * Only movements booked in it or before count, so that a closed year says the same for ever.
 *
 * @param standing at own places, at home and out, at the year's end
 * @param flows over the year, by outside account
 * @param takings for goods, less what was taken back and refunded in the year
 */
public record YearBook(Year year, List<Standing> standing, List<Flow> flows, List<Taking> takings) {

  public YearBook {
    standing = List.copyOf(standing);
    flows = List.copyOf(flows);
    takings = List.copyOf(takings);
  }

  /**
   * @param lot null for jars whose lot nobody wrote down
   * @param container null for syrup in bulk
   * @param amount pieces, or grams of syrup in bulk
   */
  public record Standing(String lot, String container, long amount) {}

  /**
   * @param account the outside account, for example {@code customer} or {@code boiled}
   * @param container null for syrup in bulk
   * @param amount pieces, or grams of syrup in bulk; below zero where it came from there
   */
  public record Flow(String account, String container, long amount) {}

  /**
   * @param channel {@code table, farm, post, wholesale, bulk}
   */
  public record Taking(String channel, Money amount) {}
}
