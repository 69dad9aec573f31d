package org.barreltally.documents.season;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashMap;
import java.util.Map;
import org.barreltally.closing.YearBook;
import org.barreltally.closing.Years;
import org.barreltally.documents.internal.BookPages;
import org.barreltally.documents.internal.BookPages.Heading;

/** What sales took, by channel: table, farm, post, wholesale, and barrels in bulk. */
@ApplicationScoped
class SalesSection implements SeasonBookSection {

  private static final String SALES =
      """
      SELECT s.channel, count(DISTINCT s.id) AS sales, sum(l.pieces) AS jars
      FROM movements m JOIN sales s ON s.movement = m.id
        LEFT JOIN (SELECT sale, sum(pieces) AS pieces FROM sale_lines GROUP BY sale) l ON l.sale = s.id
      WHERE m.book_year = :year
        AND NOT EXISTS (SELECT 1 FROM movements x WHERE x.reverses = m.id AND x.book_year = :year)
      GROUP BY s.channel ORDER BY s.channel
      """;

  private final BookRows rows;
  private final Years years;

  SalesSection(BookRows rows, Years years) {
    this.rows = rows;
    this.years = years;
  }

  @Override
  public int order() {
    return 600;
  }

  @Override
  public String title() {
    return "Takings by channel";
  }

  @Override
  public void write(BookYear year, BookPages out) {
    out.note(
        "Sales booked in the year, less those taken back and refunds booked in it, tax included"
            + " where prices include it. A sale without a known price adds jars and no money.");
    Map<String, Told> counted = new HashMap<>();
    rows.each(SALES, year, channel -> counted.put(channel.text("channel"), channel));
    out.table(
        Heading.of("Channel", 0.3),
        Heading.number("sales", 0.2),
        Heading.number("jars", 0.2),
        Heading.number("Takings", 0.3));
    years.list().stream()
        .filter(each -> each.year() == year.year())
        .flatMap(each -> years.book(each.year()).takings().stream())
        .forEach(taken -> row(out, taken, counted.remove(taken.channel())));
    counted.forEach(
        (channel, told) -> out.row(channel, told.count("sales"), told.count("jars"), ""));
  }

  private static void row(BookPages out, YearBook.Taking taken, Told counted) {
    out.row(
        taken.channel(),
        counted == null ? "" : counted.count("sales"),
        counted == null ? "" : counted.count("jars"),
        taken.amount().toString());
  }
}
