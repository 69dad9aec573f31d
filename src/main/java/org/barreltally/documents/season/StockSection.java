package org.barreltally.documents.season;

import jakarta.enterprise.context.ApplicationScoped;
import org.barreltally.documents.internal.BookPages;
import org.barreltally.documents.internal.BookPages.Heading;

/** What stood at each own place at the year's end. */
@ApplicationScoped
class StockSection implements SeasonBookSection {

  private static final String STOCK =
      """
      WITH standing AS (
        SELECT p.name, p.code, i.container, i.lot, i.grade AS unlotted, sum(e.amount) AS amount
        FROM movements m JOIN entries e ON e.movement = m.id JOIN items i ON i.id = e.item
          JOIN places p ON p.code = e.place
        WHERE m.book_year <= :year AND p.kind IN ('home', 'out')
        GROUP BY p.name, p.code, i.container, i.lot, i.grade HAVING sum(e.amount) <> 0)
      SELECT s.name, s.container, coalesce(g.grade, s.unlotted) AS grade, count(DISTINCT s.lot) AS lots,
        sum(s.amount) AS amount
      FROM standing s LEFT JOIN LATERAL (SELECT g.grade FROM lot_gradings g
        WHERE g.lot = s.lot AND g.recorded_at <= :asof ORDER BY g.recorded_at DESC, g.id DESC LIMIT 1) g ON true
      GROUP BY s.name, s.code, s.container, coalesce(g.grade, s.unlotted)
      ORDER BY s.code, s.container NULLS FIRST, 3
      """;

  private final BookRows rows;

  StockSection(BookRows rows) {
    this.rows = rows;
  }

  @Override
  public int order() {
    return 500;
  }

  @Override
  public String title() {
    return "Stock on the closing day";
  }

  @Override
  public void write(BookYear year, BookPages out) {
    out.note(
        "After all movements booked in the year. Below zero stand jars that were sold before"
            + " anyone wrote down that they were there; a count settles them.");
    out.table(
        Heading.of("Place", 0.34),
        Heading.of("Size", 0.16),
        Heading.of("Grade", 0.18),
        Heading.number("lots", 0.1),
        Heading.number("jars", 0.1),
        Heading.number("kg in bulk", 0.12));
    rows.each(
        STOCK,
        year,
        row ->
            out.row(
                row.text("name"),
                row.text("container").isEmpty() ? "in bulk" : row.text("container"),
                row.words("grade"),
                row.count("lots"),
                row.text("container").isEmpty() ? "" : row.count("amount"),
                row.text("container").isEmpty() ? row.kg("amount") : ""));
  }
}
