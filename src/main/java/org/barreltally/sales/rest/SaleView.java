package org.barreltally.sales.rest;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.barreltally.measure.ColorClass;
import org.barreltally.pricing.Money;
import org.barreltally.sales.Merged;
import org.barreltally.sales.Note;
import org.barreltally.sales.SaidSale;
import org.barreltally.sales.Sale;

/**
 * A sale as the interface shows it.
 *
 * @param result what this telling did: {@code kept, repeated, conflict}; null when it is only read
 * @param at by the device's clock
 * @param bookedAt when it happened by the book
 * @param total to be paid, tax in it; null if a price was not known
 * @param changeDue what is given back of the cash
 * @param undone whether it was taken back
 */
public record SaleView(
    UUID id,
    String result,
    String place,
    String channel,
    Instant at,
    Instant bookedAt,
    List<Line> lines,
    Money total,
    Money dealSaving,
    Money tax,
    SaidSale.Paid paid,
    Money changeDue,
    UUID priceList,
    UUID movement,
    boolean undone,
    List<Note> notes) {

  /**
   * Jars of one size.
   *
   * @param lot as the book has it; null where it is not known
   * @param saidLot only where the book has another
   */
  public record Line(
      String container,
      String lot,
      String saidLot,
      ColorClass grade,
      long count,
      Money price,
      Money amount) {}

  public static SaleView of(Merged merged) {
    return of(merged.sale(), merged.result().code());
  }

  public static SaleView of(Sale sale) {
    return of(sale, null);
  }

  private static SaleView of(Sale sale, String result) {
    return new SaleView(
        sale.id(),
        result,
        sale.place(),
        sale.channel().code(),
        sale.at(),
        sale.bookedAt(),
        sale.lines().stream().map(SaleView::line).toList(),
        sale.total(),
        sale.dealSaving(),
        sale.tax(),
        sale.paid(),
        sale.changeDue(),
        sale.priceList(),
        sale.movement(),
        sale.undone(),
        sale.notes());
  }

  private static Line line(Sale.Line line) {
    boolean same = line.saidLot() == null || line.saidLot().equals(line.lot());
    return new Line(
        line.container(),
        line.lot(),
        same ? null : line.saidLot(),
        line.grade(),
        line.count(),
        line.price(),
        line.amount());
  }
}
