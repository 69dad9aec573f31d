package org.barreltally.bulk.rest;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.bulk.BulkSale;
import org.barreltally.bulk.Figures;
import org.barreltally.bulk.SoldBulk;
import org.barreltally.bulk.Variance;
import org.barreltally.pricing.Money;

/**
 * A bulk sale with its buyer, as it is read.
 *
 * @param takenBack whether it was reversed: then the syrup is in the barrel again
 */
public record BulkSaleView(
    UUID id,
    LocalDate on,
    String tag,
    String lot,
    Buyer buyer,
    UUID movement,
    boolean takenBack,
    BulkSale.Syrup syrup,
    Figures ours,
    Figures theirs,
    Figures agreed,
    Money amount,
    Variance variance,
    BulkSale.BookDifference bookDifference,
    List<String> cautions) {

  /** Who bought it. */
  public record Buyer(UUID id, String name, String details) {}

  static BulkSaleView of(SoldBulk sold) {
    BulkSale sale = sold.sale();
    return new BulkSaleView(
        sale.id(),
        sale.on(),
        sale.tag(),
        sale.lot(),
        new Buyer(sale.buyer(), sold.buyerName(), sold.buyerDetails()),
        sale.movement(),
        sold.takenBack(),
        sale.syrup(),
        sale.ours(),
        sale.theirs(),
        sale.agreed(),
        sale.amount(),
        sale.variance(),
        sale.bookDifference(),
        sale.cautions());
  }
}
