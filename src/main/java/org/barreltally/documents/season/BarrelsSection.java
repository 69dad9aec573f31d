package org.barreltally.documents.season;

import jakarta.enterprise.context.ApplicationScoped;
import org.barreltally.documents.internal.BookPages;
import org.barreltally.documents.internal.BookPages.Heading;

/** The barrels filled in the year, and what is left in them. */
@ApplicationScoped
class BarrelsSection implements SeasonBookSection {

  private static final String BARRELS =
      """
      WITH began AS (
        SELECT i.lot, min(m.book_year) AS year FROM items i
          JOIN entries e ON e.item = i.id JOIN movements m ON m.id = e.movement
        WHERE i.lot IS NOT NULL GROUP BY i.lot)
      , filled AS (
        SELECT f.tag, f.filled_on, coalesce(r.lot, f.lot) AS lot, f.id FROM fillings f
          LEFT JOIN LATERAL (SELECT r.lot FROM barrel_readings r WHERE r.filling = f.id
            ORDER BY r.recorded_at, r.id LIMIT 1) r ON true)
      SELECT f.tag, f.filled_on, f.lot, l.brix, g.grade, t.amount AS filled, s.grams
      FROM filled f JOIN began b ON b.lot = f.lot JOIN lots l ON l.code = f.lot
        LEFT JOIN LATERAL (SELECT g.grade FROM lot_gradings g
          WHERE g.lot = l.code ORDER BY g.recorded_at, g.id LIMIT 1) g ON true
        LEFT JOIN LATERAL (SELECT e.amount FROM items i JOIN entries e ON e.item = i.id
            JOIN places p ON p.code = e.place
          WHERE i.lot = f.lot AND i.container IS NULL AND p.kind = 'home'
          ORDER BY e.movement LIMIT 1) t ON true
        LEFT JOIN LATERAL (
          SELECT sum(e.amount) AS grams FROM items i JOIN entries e ON e.item = i.id
            JOIN movements m ON m.id = e.movement JOIN places p ON p.code = e.place
          WHERE i.container IS NULL AND m.book_year <= :year AND p.kind IN ('home', 'out')
            AND (i.lot = f.lot OR i.lot IN (SELECT r.lot FROM barrel_readings r
              WHERE r.filling = f.id AND r.recorded_at <= :asof))) s ON true
      WHERE b.year = :year ORDER BY f.filled_on, f.tag
      """;

  private final BookRows rows;

  BarrelsSection(BookRows rows) {
    this.rows = rows;
  }

  @Override
  public int order() {
    return 300;
  }

  @Override
  public String title() {
    return "Barrels and heels";
  }

  @Override
  public void write(BookYear year, BookPages out) {
    out.table(
        Heading.of("Barrel", 0.16),
        Heading.of("Filled on", 0.14),
        Heading.of("Lot at filling", 0.2),
        Heading.of("Grade then", 0.16),
        Heading.number("°Bx", 0.08),
        Heading.number("kg filled", 0.13),
        Heading.number("kg left", 0.13));
    double[] sums = {0, 0};
    rows.each(
        BARRELS,
        year,
        barrel -> {
          sums[0] += barrel.decimal("filled").doubleValue();
          sums[1] += barrel.decimal("grams").doubleValue();
          out.row(
              barrel.text("tag"),
              barrel.text("filled_on"),
              barrel.text("lot"),
              barrel.words("grade"),
              barrel.rounded("brix", 1),
              barrel.kg("filled"),
              barrel.kg("grams"));
        });
    if (sums[0] > 0) {
      out.sum("All", "", "", "", "", Told.kg(sums[0]), Told.kg(sums[1]));
    }
    out.note(
        "Filled is what the book took in when the barrel was filled; topping up and drawing come"
            + " after it. Left is what stands in it at the end, the syrup topped up included.");
  }
}
