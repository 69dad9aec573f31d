package org.barreltally.table;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.measure.ColorClass;
import org.barreltally.pricing.Deal;
import org.barreltally.pricing.Money;
import org.barreltally.shows.ShowState;

/**
 * All that a table needs to know to sell for a day without asking again. The rows of the screen and
 * of the tally sheet are these rows, in this order.
 *
 * @param readAt when it was put together
 * @param pricedOn the day whose prices these are
 * @param decimals of the currency
 * @param cashFloat change money that went along; null if none was noted
 * @param others tables of the same days, to which jars may go
 * @param room what stands in the cool room, to be packed out
 * @param boxes gift boxes that somebody may wish for
 */
public record TableSheet(
    UUID id,
    String name,
    String town,
    LocalDate starts,
    LocalDate ends,
    ShowState state,
    Instant readAt,
    LocalDate pricedOn,
    String currency,
    int decimals,
    Prices priceList,
    List<Row> rows,
    List<Deal> deals,
    Money cashFloat,
    List<Other> others,
    List<Shelf> room,
    List<Box> boxes) {

  /**
   * Whose prices they are.
   *
   * @param taxIncluded whether they have the tax in them
   */
  public record Prices(UUID id, String name, int version, boolean taxIncluded) {}

  /**
   * Jars of one size and grade.
   *
   * @param grade null where any grade is meant
   * @param price of one; null where the list has none
   * @param taxPercent null where no rate was entered
   * @param lots those that came to the table; two or more are asked about
   */
  public record Row(
      String container,
      String size,
      ColorClass grade,
      Money price,
      BigDecimal taxPercent,
      List<LotThere> lots) {}

  /**
   * @param onTable pieces by the book; below zero it needs a count
   */
  public record LotThere(String lot, long onTable) {}

  /** Another table. */
  public record Other(UUID id, String name) {}

  /** Jars in the cool room that may be packed out. */
  public record Shelf(String container, String size, ColorClass grade, String lot, long onHand) {}

  /** A gift box. */
  public record Box(String name, Money price) {}
}
