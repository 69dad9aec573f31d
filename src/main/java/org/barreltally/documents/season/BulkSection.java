package org.barreltally.documents.season;

import jakarta.enterprise.context.ApplicationScoped;
import org.barreltally.documents.internal.BookPages;
import org.barreltally.documents.internal.BookPages.Heading;

/** Barrels sold whole, with the agreed figures; buyers by number. */
@ApplicationScoped
class BulkSection implements SeasonBookSection {

  private static final String BULK =
      """
      SELECT s.sold_on, s.tag, s.lot, s.amount, s.currency, s.ticket #>> '{agreed,grade}' AS grade,
        concat_ws(' ', s.ticket #>> '{agreed,weight,value}', s.ticket #>> '{agreed,weight,unit}') AS weight,
        dense_rank() OVER (ORDER BY b.first, s.buyer) AS buyer,
        EXISTS (SELECT 1 FROM movements x WHERE x.reverses = m.id AND x.book_year <= :year) AS back
      FROM bulk_sales s JOIN movements m ON m.id = s.movement
        JOIN (SELECT o.buyer, min(CAST(o.movement AS text)) AS first FROM bulk_sales o
          JOIN movements n ON n.id = o.movement WHERE n.book_year = :year GROUP BY o.buyer) b ON b.buyer = s.buyer
      WHERE m.book_year = :year ORDER BY s.sold_on, s.recorded_at, s.tag
      """;

  private final BookRows rows;

  BulkSection(BookRows rows) {
    this.rows = rows;
  }

  @Override
  public int order() {
    return 700;
  }

  @Override
  public String title() {
    return "Barrels sold in bulk";
  }

  @Override
  public void write(BookYear year, BookPages out) {
    out.note(
        "Buyers are numbered in the order of their first sale of the year; the tickets name them.");
    out.table(
        Heading.of("Day", 0.12),
        Heading.of("Barrel", 0.14),
        Heading.of("Lot", 0.17),
        Heading.of("Grade agreed", 0.15),
        Heading.number("Weight agreed", 0.14),
        Heading.number("Amount", 0.16),
        Heading.number("Buyer", 0.12));
    rows.each(
        BULK,
        year,
        sale ->
            out.row(
                sale.text("sold_on"),
                sale.text("tag") + (sale.yes("back") ? " (taken back)" : ""),
                sale.text("lot"),
                sale.words("grade"),
                sale.text("weight"),
                sale.money("amount"),
                "no. " + sale.count("buyer")));
  }
}
