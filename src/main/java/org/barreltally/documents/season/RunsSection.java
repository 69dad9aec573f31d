package org.barreltally.documents.season;

import jakarta.enterprise.context.ApplicationScoped;
import org.barreltally.documents.internal.BookPages;
import org.barreltally.documents.internal.BookPages.Heading;

/** The canning runs of the year, with what was lost to each cause. */
@ApplicationScoped
class RunsSection implements SeasonBookSection {

  private static final String RUNS =
      """
      SELECT r.run_on, r.lot, r.sheet ->> 'grade' AS grade,
        CAST(r.sheet #>> '{blend,volumeAt68F,value}' AS numeric) AS came,
        (SELECT sum(CAST(f ->> 'count' AS bigint)) FROM jsonb_array_elements(r.sheet -> 'fills') f) AS jars,
        CAST(r.sheet #>> '{shrink,byCause,filter,value}' AS numeric) AS filter,
        CAST(r.sheet #>> '{shrink,byCause,overfill,value}' AS numeric) AS overfill,
        CAST(r.sheet #>> '{shrink,byCause,broken,value}' AS numeric) AS broken,
        CAST(r.sheet #>> '{shrink,byCause,unexplained,value}' AS numeric) AS unexplained,
        CAST(r.sheet #>> '{shrink,percent}' AS numeric) AS percent,
        EXISTS (SELECT 1 FROM movements x WHERE x.reverses = m.id AND x.book_year <= :year) AS back
      FROM canning_runs r JOIN movements m ON m.id = r.movement
      WHERE m.book_year = :year ORDER BY r.run_on, r.lot
      """;

  private final BookRows rows;

  RunsSection(BookRows rows) {
    this.rows = rows;
  }

  @Override
  public int order() {
    return 400;
  }

  @Override
  public String title() {
    return "Canning";
  }

  @Override
  public void write(BookYear year, BookPages out) {
    out.note(
        "Gallons at 68 °F. Shrink is what came in, water included, and stands neither in good jars nor"
            + " in the heel; the unexplained is a column of its own and may be below zero.");
    out.table(
        Heading.of("Day", 0.11),
        Heading.of("Lot", 0.15),
        Heading.of("Grade", 0.12),
        Heading.number("in, gal", 0.1),
        Heading.number("good jars", 0.08),
        Heading.number("filter", 0.08),
        Heading.number("overfill", 0.09),
        Heading.number("broken", 0.08),
        Heading.number("unex- plained", 0.09),
        Heading.number("shrink, %", 0.1));
    rows.each(
        RUNS,
        year,
        run ->
            out.row(
                run.text("run_on"),
                run.text("lot") + (run.yes("back") ? " (taken back)" : ""),
                run.words("grade"),
                run.rounded("came", 2),
                run.count("jars"),
                run.rounded("filter", 2),
                run.rounded("overfill", 2),
                run.rounded("broken", 2),
                run.rounded("unexplained", 2),
                run.rounded("percent", 2)));
  }
}
