package org.barreltally.pricing;

import java.util.List;

/**
 * The deals of a price list.
 *
 * <p>The buyer pays the least that the list allows: of all ways to take jars of one size together
 * in deals, as often as they go, and the rest singly, the cheapest is charged; of ways that cost
 * the same the one with fewest deals. So a deal for any grade takes the dearest jars first, and a
 * deal dearer than its jars singly is never charged. Jars with an agreed price take no part.
 *
 * <p>Each deal's price is borne by its jars in proportion to what they cost singly, and jars of one
 * size and price that can take part in the same deals bear the same, whatever their lot. Lines are
 * cut to whole cents; the cents left over go one each to the lines that were cut most, of equals to
 * the dearer, then to the earlier one. So no line is a cent or more from its exact share.
 */
public final class Deals {

  /** The most jars of one size in a basket that deals can be found for. */
  public static final int MOST_JARS = 5000;

  private final PriceList list;

  private Deals(PriceList list) {
    this.list = list;
  }

  public static Deals of(PriceList list) {
    return new Deals(list);
  }

  /**
   * What a basket costs with deals.
   *
   * @throws NotOnPriceList if the list has no price for a line and none was agreed
   * @throws CurrencyMismatch if an agreed price is of another currency
   * @throws org.barreltally.refusal.InvalidField if there are more than {@link #MOST_JARS} of a
   *     size that is in a deal
   */
  public Charged apply(List<BasketLine> lines) {
    return new Basket(list, lines).withDeals();
  }
}
