package org.barreltally.documents.season;

import jakarta.enterprise.context.ApplicationScoped;
import org.barreltally.documents.internal.BookPages;
import org.barreltally.documents.internal.BookPages.Heading;

/** The lots that began in the year, with their grades. */
@ApplicationScoped
class LotsSection implements SeasonBookSection {

  private static final String LOTS =
      """
      WITH began AS (
        SELECT i.lot, min(m.book_year) AS year FROM items i
          JOIN entries e ON e.item = i.id JOIN movements m ON m.id = e.movement
        WHERE i.lot IS NOT NULL GROUP BY i.lot)
      SELECT l.code, l.kind, l.made_on, array_to_string(l.seasons, ', ') AS seasons, l.brix,
        g.grade, h.step = 'held' AS held, s.grams, s.jars
      FROM began b JOIN lots l ON l.code = b.lot
        LEFT JOIN LATERAL (SELECT g.grade FROM lot_gradings g
          WHERE g.lot = l.code AND g.recorded_at <= :asof ORDER BY g.recorded_at DESC, g.id DESC LIMIT 1) g ON true
        LEFT JOIN LATERAL (SELECT h.step FROM lot_holds h
          WHERE h.lot = l.code AND h.recorded_at <= :asof ORDER BY h.recorded_at DESC, h.id DESC LIMIT 1) h ON true
        LEFT JOIN LATERAL (
          SELECT sum(e.amount) FILTER (WHERE i.container IS NULL) AS grams,
            sum(e.amount) FILTER (WHERE i.container IS NOT NULL) AS jars
          FROM items i JOIN entries e ON e.item = i.id JOIN movements m ON m.id = e.movement
            JOIN places p ON p.code = e.place
          WHERE i.lot = l.code AND m.book_year <= :year AND p.kind IN ('home', 'out')) s ON true
      WHERE b.year = :year ORDER BY l.made_on, l.code
      """;

  private final BookRows rows;

  LotsSection(BookRows rows) {
    this.rows = rows;
  }

  @Override
  public int order() {
    return 200;
  }

  @Override
  public String title() {
    return "Lots";
  }

  @Override
  public void write(BookYear year, BookPages out) {
    out.note(
        "Lots whose first movement is booked in the year. A grade is the last one given by the"
            + " time the book stands at; the maker grades, and local rules say what a grade must be.");
    out.table(
        Heading.of("Lot", 0.2),
        Heading.of("Kind", 0.1),
        Heading.of("Made on", 0.13),
        Heading.of("Of seasons", 0.15),
        Heading.of("Grade", 0.14),
        Heading.number("°Bx", 0.08),
        Heading.number("kg left", 0.1),
        Heading.number("jars left", 0.1));
    rows.each(
        LOTS,
        year,
        lot ->
            out.row(
                lot.text("code") + (lot.yes("held") ? " (held)" : ""),
                lot.words("kind"),
                lot.text("made_on"),
                lot.text("seasons"),
                lot.words("grade"),
                lot.rounded("brix", 1),
                lot.whole("grams") == 0 ? "" : lot.kg("grams"),
                lot.whole("jars") == 0 ? "" : lot.count("jars")));
  }
}
