package org.barreltally.pricing;

import java.time.LocalDate;
import java.util.List;

/**
 * What a basket would cost; nothing is stored.
 *
 * @param lines in the order of the basket
 * @param deals those that were used
 * @param saved by the deals
 * @param net without tax
 * @param tax the sum over the lines, each rounded once
 * @param total what the buyer pays
 * @param taxIncluded whether the prices have the tax in them
 * @param place where it is sold; null where nobody said, then no tax is known
 */
public record Quote(
    List<Line> lines,
    List<Charged.Used> deals,
    Money saved,
    Money net,
    Money tax,
    Money total,
    boolean taxIncluded,
    String place,
    LocalDate on) {

  public Quote {
    lines = List.copyOf(lines);
    deals = List.copyOf(deals);
  }

  /**
   * @param each what one jar costs singly
   * @param amount with its share of the deals, with or without tax as the list has it
   */
  public record Line(BasketLine jars, Money each, Money amount, Taxed taxed) {}
}
