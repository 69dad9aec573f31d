package org.barreltally.sales.rest;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.pricing.Money;
import org.barreltally.sales.Note;
import org.barreltally.sales.SaidSale;
import org.barreltally.sales.away.SellAway;
import org.barreltally.sales.away.SoldAway;

/**
 * A sale away from shows as the interface shows it.
 *
 * @param number of its invoice or receipt, without gaps in each year
 * @param buyer only where it is read: answers to POST hold no names
 */
public record AwaySaleView(
    UUID id,
    String number,
    LocalDate issuedOn,
    String channel,
    String place,
    SellAway.Buyer buyer,
    List<SaleView.Line> lines,
    Money total,
    Money dealSaving,
    Money tax,
    SaidSale.Paid paid,
    Money changeDue,
    UUID movement,
    boolean undone,
    List<Note> notes) {

  static AwaySaleView of(SoldAway sold, boolean named) {
    SaleView sale = SaleView.of(sold.sale());
    return new AwaySaleView(
        sale.id(),
        sold.number().text(),
        sold.number().issuedOn(),
        sale.channel(),
        sale.place(),
        named ? sold.buyer() : null,
        sale.lines(),
        sale.total(),
        sale.dealSaving(),
        sale.tax(),
        sale.paid(),
        sale.changeDue(),
        sale.movement(),
        sale.undone(),
        sale.notes());
  }
}
