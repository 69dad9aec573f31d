package org.barreltally.closing.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barreltally.closing.Year;
import org.barreltally.closing.YearBook;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.RecordedBy;

/** The years of the book in the database. */
@ApplicationScoped
public class YearRows {

  private static final String YEARS =
      """
      WITH booked AS (
        SELECT book_year, count(*) AS movements, count(*) FILTER (WHERE late) AS late
        FROM movements GROUP BY book_year)
      SELECT coalesce(b.book_year, c.year), c.closed_at, coalesce(b.movements, 0),
        coalesce(b.late, 0), coalesce(b.book_year, c.year) <= (SELECT max(year) FROM closed_years)
      FROM booked b FULL JOIN closed_years c ON c.year = b.book_year ORDER BY 1
      """;

  private static final String CLOSE =
      """
      INSERT INTO closed_years (year, newest_movement, closed_at, closed_by)
      VALUES (?, (SELECT id FROM movements ORDER BY id DESC LIMIT 1), ?, ?)
      """;

  /** The same sums as db/invariants/closed-years-stand.sql. */
  private static final String SUMS =
      """
      INSERT INTO closed_year_sums (year, movements, entries, checksum)
      SELECT ?::int, count(DISTINCT m.id), count(*), coalesce(sum(
        hashtextextended(concat_ws(' ', e.movement, e.line, e.place, e.item, e.amount), 0)), 0)
      FROM movements m JOIN entries e ON e.movement = m.id WHERE m.book_year = ?
      """;

  private static final String STANDING =
      """
      SELECT i.lot, i.container, sum(e.amount)
      FROM movements m JOIN entries e ON e.movement = m.id JOIN items i ON i.id = e.item
        JOIN places p ON p.code = e.place
      WHERE m.book_year <= ? AND p.kind IN ('home', 'out')
      GROUP BY i.lot, i.container HAVING sum(e.amount) <> 0
      ORDER BY i.lot NULLS LAST, i.container NULLS FIRST
      """;

  private static final String FLOWS =
      """
      SELECT e.place, i.container, sum(e.amount)
      FROM movements m JOIN entries e ON e.movement = m.id JOIN items i ON i.id = e.item
        JOIN places p ON p.code = e.place
      WHERE m.book_year = ? AND p.kind = 'outside'
      GROUP BY e.place, i.container HAVING sum(e.amount) <> 0
      ORDER BY e.place, i.container NULLS FIRST
      """;

  private final EntityManager entities;
  private final RecordedBy recordedBy;

  YearRows(EntityManager entities, RecordedBy recordedBy) {
    this.entities = entities;
    this.recordedBy = recordedBy;
  }

  /** The years that have movements or were closed, the earliest first. */
  public List<Year> list() {
    List<Year> years = new ArrayList<>();
    new Bundle()
        .ask(
            YEARS,
            row -> {
              OffsetDateTime closed = row.getObject(2, OffsetDateTime.class);
              years.add(
                  new Year(
                      row.getInt(1),
                      row.getBoolean(5) ? "closed" : "open",
                      closed == null ? null : closed.toInstant(),
                      row.getLong(3),
                      row.getLong(4)));
            })
        .send(entities);
    return years;
  }

  /** Lets no other closing begin until this transaction ends. */
  public void alone() {
    new Bundle()
        .add("SELECT pg_advisory_xact_lock(hashtextextended('close a year', 0))")
        .send(entities);
  }

  public Optional<Integer> lastClosed() {
    List<Integer> found = new ArrayList<>();
    new Bundle()
        .ask(
            "SELECT max(year) FROM closed_years HAVING max(year) IS NOT NULL",
            row -> found.add(row.getInt(1)))
        .send(entities);
    return found.stream().findFirst();
  }

  /**
   * Closes a year. Waits for the postings in flight; none begins until this transaction ends, so
   * the sums hold what they brought.
   */
  public void close(int year, Instant at) {
    new Bundle().add(CLOSE, year, at, recordedBy.user()).send(entities);
    new Bundle().add(SUMS, year, year).send(entities);
  }

  public List<YearBook.Standing> standing(int year) {
    List<YearBook.Standing> lines = new ArrayList<>();
    new Bundle()
        .ask(
            STANDING,
            row ->
                lines.add(
                    new YearBook.Standing(row.getString(1), row.getString(2), row.getLong(3))),
            year)
        .send(entities);
    return lines;
  }

  public List<YearBook.Flow> flows(int year) {
    List<YearBook.Flow> lines = new ArrayList<>();
    new Bundle()
        .ask(
            FLOWS,
            row -> lines.add(new YearBook.Flow(row.getString(1), row.getString(2), row.getLong(3))),
            year)
        .send(entities);
    return lines;
  }
}
