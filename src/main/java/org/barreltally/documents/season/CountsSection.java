package org.barreltally.documents.season;

import jakarta.enterprise.context.ApplicationScoped;
import org.barreltally.documents.internal.BookPages;
import org.barreltally.documents.internal.BookPages.Heading;
import org.barreltally.ledger.Days;

/** The counts of shelves in the year and their differences. */
@ApplicationScoped
class CountsSection implements SeasonBookSection {

  private static final String COUNTS =
      """
      SELECT c.counted_at, p.name, l.container, l.lot, l.book, l.counted,
        coalesce(l.cause, CASE WHEN l.swap_with IS NOT NULL THEN 'perhaps swapped with ' || l.swap_with END) AS cause
      FROM stock_counts c JOIN places p ON p.code = c.place LEFT JOIN movements m ON m.id = c.movement
        LEFT JOIN stock_count_lines l ON l.count = c.id AND l.book <> l.counted
      WHERE c.recorded_at <= :asof AND (m.book_year = :year
        OR m.id IS NULL AND c.counted_at >= :from AND c.counted_at < :until)
      ORDER BY c.counted_at, c.id, l.container, l.lot
      """;

  private final BookRows rows;
  private final Days days;

  CountsSection(BookRows rows, Days days) {
    this.rows = rows;
    this.days = days;
  }

  @Override
  public int order() {
    return 1200;
  }

  @Override
  public String title() {
    return "Counts and what they found";
  }

  @Override
  public void write(BookYear year, BookPages out) {
    out.note(
        "Only lines that differ are listed. A count may name the cause; without one the difference is unexplained.");
    out.table(
        Heading.of("Counted on", 0.13),
        Heading.of("Place", 0.24),
        Heading.of("Size", 0.11),
        Heading.of("Lot", 0.18),
        Heading.number("book", 0.08),
        Heading.number("counted", 0.1),
        Heading.of("Put down to", 0.16));
    rows.each(
        COUNTS,
        year,
        line ->
            out.row(
                days.dateOf(line.instant("counted_at")).toString(),
                line.text("name"),
                line.text("container"),
                line.text("lot"),
                line.count("book"),
                line.count("counted"),
                line.text("container").isEmpty() ? "no difference" : line.words("cause")));
  }
}
