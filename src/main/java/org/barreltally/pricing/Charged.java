package org.barreltally.pricing;

import java.util.List;

/**
 * What a basket costs.
 *
 * @param lines in the order of the basket; their amounts sum to the total
 * @param saved by the deals, 0 or more
 * @param deals those that were used
 */
public record Charged(List<Line> lines, Money total, Money saved, List<Used> deals) {

  public Charged {
    lines = List.copyOf(lines);
    deals = List.copyOf(deals);
  }

  /**
   * @param each what one jar costs singly
   * @param amount what the line costs, its share of the deals in it
   */
  public record Line(Money each, Money amount) {}

  /**
   * @param times 1 or more
   */
  public record Used(Deal deal, int times) {}
}
