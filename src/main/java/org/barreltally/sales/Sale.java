package org.barreltally.sales;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.barreltally.measure.ColorClass;
import org.barreltally.pricing.Money;

/**
 * A sale as it is kept. It never changes; an undone sale was taken back by a reversal of its
 * movement.
 *
 * @param at by the clock of the device
 * @param bookedAt when it happened by the book: {@code at}, or the recording where that lay ahead
 * @param priceList null if none held
 * @param total what was to be paid, tax in it; null if a price was not known
 * @param dealSaving what the deals took off
 * @param tax in the total
 * @param paid null if nothing was said of it
 * @param changeDue what is given back of the cash
 * @param undone whether its movement was taken back
 */
public record Sale(
    UUID id,
    String place,
    Channel channel,
    Instant at,
    Instant bookedAt,
    Instant recordedAt,
    UUID priceList,
    List<Line> lines,
    Money total,
    Money dealSaving,
    Money tax,
    SaidSale.Paid paid,
    Money changeDue,
    UUID movement,
    UUID buyer,
    boolean undone,
    List<Note> notes) {

  /**
   * Jars of one size.
   *
   * @param lot of the book; null where the lot is not known
   * @param saidLot as it was said; null if it was not
   * @param grade null where it is not known
   * @param price of one; null if it is not known
   * @param priceSaid whether the price was said with the sale
   * @param amount of the line, its share of a deal in it; null if the price is not known
   */
  public record Line(
      String container,
      String lot,
      String saidLot,
      ColorClass grade,
      long count,
      Money price,
      boolean priceSaid,
      Money amount,
      UUID item) {}

  Sale movedBy(UUID movement) {
    return new Sale(
        id,
        place,
        channel,
        at,
        bookedAt,
        recordedAt,
        priceList,
        lines,
        total,
        dealSaving,
        tax,
        paid,
        changeDue,
        movement,
        buyer,
        undone,
        notes);
  }

  public Sale {
    lines = List.copyOf(lines);
    notes = List.copyOf(notes);
  }
}
