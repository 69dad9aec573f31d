package org.barreltally.documents.season;

import jakarta.enterprise.context.ApplicationScoped;
import org.barreltally.documents.internal.BookPages;
import org.barreltally.documents.internal.BookPages.Heading;

/** What shops were brought, sold, owed and paid in the year. */
@ApplicationScoped
class ShopsSection implements SeasonBookSection {

  private static final String SHOPS =
      """
      WITH moved AS (
        SELECT d.shop, d.direction, sum(CAST(j ->> 'count' AS bigint)) AS jars
        FROM shop_deliveries d JOIN movements m ON m.id = d.movement
          CROSS JOIN LATERAL jsonb_array_elements(d.lines) j
        WHERE m.book_year = :year
          AND NOT EXISTS (SELECT 1 FROM movements x WHERE x.reverses = m.id AND x.book_year <= :year)
        GROUP BY d.shop, d.direction),
      counted AS (
        SELECT c.shop, c.currency, c.due, c.lines
        FROM shop_counts c LEFT JOIN movements m ON m.id = c.movement
        WHERE coalesce(m.book_year, CAST(extract(year FROM c.on_day) AS integer)) = :year
          AND c.recorded_at <= :asof
          AND NOT EXISTS (SELECT 1 FROM movements x WHERE x.reverses = m.id AND x.book_year <= :year)),
      sums AS (
        SELECT c.shop, sum(CAST(j ->> 'sold' AS bigint)) AS sold, sum(CAST(j ->> 'broken' AS bigint)) AS broken,
          sum(CAST(j ->> 'missing' AS bigint)) AS missing
        FROM counted c CROSS JOIN LATERAL jsonb_array_elements(c.lines) j GROUP BY c.shop),
      due AS (SELECT c.shop, c.currency, sum(c.due) AS due FROM counted c GROUP BY c.shop, c.currency),
      paid AS (
        SELECT p.shop, p.currency, sum(p.amount) AS paid FROM shop_payments p
        WHERE extract(year FROM p.on_day) = :year AND p.recorded_at <= :asof GROUP BY p.shop, p.currency)
      SELECT s.code, coalesce(d.currency, p.currency) AS currency, d.due, p.paid,
        (SELECT jars FROM moved o WHERE o.shop = s.code AND o.direction = 'delivered') AS brought,
        (SELECT sum(jars) FROM moved o WHERE o.shop = s.code AND o.direction <> 'delivered') AS back,
        c.sold, c.broken, c.missing
      FROM shops s LEFT JOIN sums c ON c.shop = s.code LEFT JOIN due d ON d.shop = s.code
        LEFT JOIN paid p ON p.shop = s.code AND (d.currency IS NULL OR p.currency = d.currency)
      WHERE EXISTS (SELECT 1 FROM moved o WHERE o.shop = s.code) OR c.shop IS NOT NULL OR p.shop IS NOT NULL
      ORDER BY s.code
      """;

  private final BookRows rows;

  ShopsSection(BookRows rows) {
    this.rows = rows;
  }

  @Override
  public int order() {
    return 1100;
  }

  @Override
  public String title() {
    return "Shops on consignment";
  }

  @Override
  public void write(BookYear year, BookPages out) {
    out.note(
        "Jars brought, brought back and sold by the year they are booked in, payments by their"
            + " day; the statements tell each step.");
    out.table(
        Heading.of("Shop", 0.22),
        Heading.number("brought", 0.1),
        Heading.number("brought back", 0.11),
        Heading.number("sold", 0.09),
        Heading.number("broken", 0.09),
        Heading.number("missing", 0.09),
        Heading.number("Due", 0.15),
        Heading.number("Paid", 0.15));
    rows.each(
        SHOPS,
        year,
        shop ->
            out.row(
                shop.text("code"),
                shop.count("brought"),
                shop.count("back"),
                shop.count("sold"),
                shop.count("broken"),
                shop.count("missing"),
                shop.money("due"),
                shop.money("paid")));
  }
}
