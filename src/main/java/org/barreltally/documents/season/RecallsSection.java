package org.barreltally.documents.season;

import jakarta.enterprise.context.ApplicationScoped;
import org.barreltally.documents.internal.BookPages;
import org.barreltally.documents.internal.BookPages.Heading;
import org.barreltally.ledger.Days;

/** Recalls begun in the year, and lots held and released. */
@ApplicationScoped
class RecallsSection implements SeasonBookSection {

  private static final String RECALLS =
      """
      SELECT r.recorded_at, r.lot, r.rehearsal, r.reason,
        (SELECT count(*) FROM recall_lots t WHERE t.recall = r.id) AS touched,
        (SELECT e.recorded_at FROM recall_ends e WHERE e.recall = r.id AND e.recorded_at <= :asof) AS ended
      FROM recalls r
      WHERE r.recorded_at >= :from AND r.recorded_at < :until AND r.recorded_at <= :asof
      ORDER BY r.recorded_at, r.id
      """;

  private static final String HOLDS =
      """
      SELECT h.recorded_at, h.lot, h.step, h.reason FROM lot_holds h
      WHERE h.recorded_at >= :from AND h.recorded_at < :until AND h.recorded_at <= :asof
      ORDER BY h.recorded_at, h.id
      """;

  private final BookRows rows;
  private final Days days;

  RecallsSection(BookRows rows, Days days) {
    this.rows = rows;
    this.days = days;
  }

  @Override
  public int order() {
    return 1300;
  }

  @Override
  public String title() {
    return "Recalls, rehearsals and holds";
  }

  @Override
  public void write(BookYear year, BookPages out) {
    out.say("Recalls and rehearsals begun in this year:");
    out.table(
        Heading.of("Begun on", 0.13),
        Heading.of("Lot", 0.18),
        Heading.of("Kind", 0.12),
        Heading.number("lots touched", 0.1),
        Heading.of("Reason", 0.32),
        Heading.of("Ended", 0.15));
    rows.each(
        RECALLS,
        year,
        recall ->
            out.row(
                days.dateOf(recall.instant("recorded_at")).toString(),
                recall.text("lot"),
                recall.yes("rehearsal") ? "rehearsal" : "recall",
                recall.count("touched"),
                recall.text("reason"),
                recall.instant("ended") == null
                    ? "not ended"
                    : days.dateOf(recall.instant("ended")).toString()));
    out.say("Lots held and released in this year:");
    out.table(
        Heading.of("On", 0.13),
        Heading.of("Lot", 0.2),
        Heading.of("Step", 0.13),
        Heading.of("Reason", 0.54));
    rows.each(
        HOLDS,
        year,
        step ->
            out.row(
                days.dateOf(step.instant("recorded_at")).toString(),
                step.text("lot"),
                step.words("step"),
                step.text("reason")));
  }
}
