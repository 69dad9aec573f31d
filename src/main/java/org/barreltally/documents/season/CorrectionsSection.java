package org.barreltally.documents.season;

import jakarta.enterprise.context.ApplicationScoped;
import org.barreltally.documents.internal.BookPages;
import org.barreltally.documents.internal.BookPages.Heading;
import org.barreltally.ledger.Days;

/** What was taken back in the year and why, and what was told after its own year was closed. */
@ApplicationScoped
class CorrectionsSection implements SeasonBookSection {

  private static final String BACK =
      """
      SELECT m.recorded_at, o.kind, o.happened_at, o.book_year AS first, m.reason
      FROM movements m JOIN movements o ON o.id = m.reverses
      WHERE m.book_year = :year ORDER BY m.recorded_at, m.id
      """;

  private static final String LATE =
      """
      SELECT m.recorded_at, m.kind, m.happened_at FROM movements m
      WHERE m.book_year = :year AND m.late ORDER BY m.recorded_at, m.id
      """;

  private final BookRows rows;
  private final Days days;

  CorrectionsSection(BookRows rows, Days days) {
    this.rows = rows;
    this.days = days;
  }

  @Override
  public int order() {
    return 1400;
  }

  @Override
  public String title() {
    return "Corrections and late facts";
  }

  @Override
  public void write(BookYear year, BookPages out) {
    out.say("Taken back in this year:");
    out.table(
        Heading.of("On", 0.13),
        Heading.of("What", 0.17),
        Heading.of("Happened on", 0.14),
        Heading.number("booked in", 0.1),
        Heading.of("Reason", 0.46));
    rows.each(
        BACK,
        year,
        taken ->
            out.row(
                days.dateOf(taken.instant("recorded_at")).toString(),
                taken.words("kind"),
                days.dateOf(taken.instant("happened_at")).toString(),
                taken.count("first"),
                taken.text("reason")));
    out.say("Happened in a year that was closed by then, and so booked in this one:");
    out.table(
        Heading.of("Told on", 0.13), Heading.of("What", 0.17), Heading.of("Happened on", 0.7));
    rows.each(
        LATE,
        year,
        late ->
            out.row(
                days.dateOf(late.instant("recorded_at")).toString(),
                late.words("kind"),
                days.dateOf(late.instant("happened_at")).toString()));
  }
}
