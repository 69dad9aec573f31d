package org.barreltally.sales;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.barreltally.measure.ColorClass;
import org.barreltally.pricing.Money;

/**
 * A sale as its device tells it.
 *
 * @param id made by the device; a repeat under the same id is the same sale
 * @param at by the clock of the device
 * @param deal whether the deals of the price list were given; null for no
 * @param paid null if nothing was said of it
 * @param reason why a price was given by hand; null if nobody said
 */
public record SaidSale(
    UUID id, Instant at, List<Line> lines, Boolean deal, Paid paid, String reason) {

  /** Without words to it. */
  public SaidSale(UUID id, Instant at, List<Line> lines, Boolean deal, Paid paid) {
    this(id, at, lines, deal, paid, null);
  }

  /** The most lines of one sale. */
  public static final int LINES_MAX = 100;

  /** The most jars in one line; more is a slip of the thumb. */
  public static final int COUNT_MAX = 5000;

  /** The most characters of a reason. */
  public static final int REASON_MAX = 200;

  /** The most sales told at once. */
  public static final int SALES_MAX = 1000;

  /**
   * Jars of one size.
   *
   * @param lot as read from the label; null if nobody looked
   * @param grade null if it was not said; a known lot knows its grade
   * @param price for one jar; null for the price list's
   */
  public record Line(String container, String lot, ColorClass grade, Integer count, Money price) {}

  /**
   * What was handed over; each null if none.
   *
   * @param cash notes and coins, change not yet given back
   * @param owing what the buyer pays later
   */
  public record Paid(Money cash, Money card, Money owing) {}

  boolean isDeal() {
    return Boolean.TRUE.equals(deal);
  }
}
