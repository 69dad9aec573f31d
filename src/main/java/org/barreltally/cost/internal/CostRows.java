package org.barreltally.cost.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.cost.Cost;
import org.barreltally.cost.CostKind;
import org.barreltally.cost.CostMethod;
import org.barreltally.cost.CostMethods;
import org.barreltally.cost.EnterCost;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.pricing.Money;

/** Costs and methods in the database. */
@ApplicationScoped
public class CostRows {

  private static final String ADD =
      """
      INSERT INTO costs (id, on_day, kind, season, lot, run, container, supply, show, amount,
        currency, hours, rate, pieces, note, book_year, recorded_at, recorded_by)
      VALUES (?, ?, ?, ?::int, ?::text, ?::text, ?::text, ?::text, ?::uuid, ?, ?, ?::numeric,
        ?::numeric, ?::int, ?::text, ?, ?, ?)
      """;

  private static final String READ =
      """
      SELECT c.id, c.on_day, c.kind, c.season, c.lot, c.run, c.container, c.supply, c.show,
        c.amount, c.currency, c.hours, c.rate, c.pieces, c.note, c.book_year, c.late,
        r.reason, r.recorded_at, r.book_year, r.late
      FROM costs c LEFT JOIN cost_reversals r ON r.cost = c.id
      """;

  private static final String REVERSE =
      """
      INSERT INTO cost_reversals (cost, reason, book_year, recorded_at, recorded_by)
      VALUES (?, ?, ?, ?, ?) ON CONFLICT DO NOTHING RETURNING cost
      """;

  private final EntityManager entities;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  CostRows(EntityManager entities, Days days, Ids ids, RecordedBy recordedBy) {
    this.entities = entities;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  /** Lets no year be closed until this transaction ends, and waits for a closing at work. */
  public void waitForClosing() {
    new Bundle()
        .add("SELECT pg_advisory_xact_lock_shared(hashtextextended('close a year', 0))")
        .send(entities);
  }

  public Optional<Integer> lastClosed() {
    return first(
        "SELECT max(year) FROM closed_years HAVING max(year) IS NOT NULL", row -> row.getInt(1));
  }

  public void add(UUID id, EnterCost said, Money amount, Integer pieces) {
    new Bundle()
        .add(
            ADD,
            id,
            said.on(),
            said.kind().code(),
            said.season(),
            said.lot(),
            said.run(),
            said.container(),
            said.supply(),
            said.show(),
            amount.amount(),
            amount.currency(),
            said.hours(),
            said.rate() == null ? null : said.rate().amount(),
            pieces,
            said.note(),
            said.on().getYear(),
            days.now(),
            recordedBy.user())
        .send(entities);
  }

  /** False if it was taken back before. */
  public boolean reverse(UUID id, String reason) {
    return first(
            REVERSE, row -> true, id, reason, days.today().getYear(), days.now(), recordedBy.user())
        .isPresent();
  }

  public Optional<Cost> find(UUID id) {
    return first(READ + " WHERE c.id = ?", CostRows::cost, id);
  }

  public List<Cost> list(Integer year, UUID after, int limit) {
    return all(
        READ
            + " WHERE (?::int IS NULL OR c.book_year = ?::int) AND (?::uuid IS NULL OR c.id > ?::uuid)"
            + " ORDER BY c.id LIMIT ?",
        CostRows::cost,
        year,
        year,
        after,
        after,
        limit);
  }

  public boolean isRun(String lot) {
    return first("SELECT 1 FROM canning_runs WHERE lot = ?", row -> true, lot).isPresent();
  }

  public boolean isSupply(String code) {
    return first("SELECT 1 FROM supplies WHERE code = ?", row -> true, code).isPresent();
  }

  /** Whether some of a lot was boiled, bought or there when the book began. */
  public boolean cameFromOutside(String lot) {
    return first(
            """
            SELECT 1 FROM items i JOIN entries e ON e.item = i.id
            WHERE i.lot = ? AND e.place IN ('boiled', 'bought', 'opening') AND e.amount < 0 LIMIT 1
            """,
            row -> true,
            lot)
        .isPresent();
  }

  public CostMethods.Chosen choose(int year, CostMethod method) {
    Instant now = days.now();
    new Bundle()
        .add(
            "INSERT INTO cost_methods (id, year, method, recorded_at, recorded_by)"
                + " VALUES (?, ?, ?, ?, ?)",
            ids.next(),
            year,
            method.code(),
            now,
            recordedBy.user())
        .send(entities);
    return new CostMethods.Chosen(year, method, now);
  }

  public List<CostMethods.Chosen> methods() {
    return all(
        "SELECT DISTINCT ON (year) year, method, recorded_at FROM cost_methods"
            + " ORDER BY year, id DESC",
        row ->
            new CostMethods.Chosen(
                row.getInt(1), CostMethod.of(row.getString(2)), instant(row, 3)));
  }

  private static Cost cost(ResultSet row) throws SQLException {
    String currency = row.getString(11);
    BigDecimal rate = row.getBigDecimal(13);
    return new Cost(
        row.getObject(1, UUID.class),
        row.getObject(2, LocalDate.class),
        CostKind.of(row.getString(3)),
        row.getObject(4, Integer.class),
        row.getString(5),
        row.getString(6),
        row.getString(7),
        row.getString(8),
        row.getObject(9, UUID.class),
        Money.rounded(row.getBigDecimal(10), currency),
        row.getBigDecimal(12),
        rate == null ? null : Money.rounded(rate, currency),
        row.getObject(14, Integer.class),
        row.getString(15),
        row.getInt(16),
        row.getBoolean(17),
        row.getString(18) == null
            ? null
            : new Cost.Reversed(
                row.getString(18), instant(row, 19), row.getInt(20), row.getBoolean(21)));
  }

  private static Instant instant(ResultSet row, int column) throws SQLException {
    return row.getObject(column, OffsetDateTime.class).toInstant();
  }

  private interface Reading<T> {
    T read(ResultSet row) throws SQLException;
  }

  private <T> Optional<T> first(String sql, Reading<T> reading, Object... values) {
    return all(sql, reading, values).stream().findFirst();
  }

  private <T> List<T> all(String sql, Reading<T> reading, Object... values) {
    List<T> found = new ArrayList<>();
    new Bundle().ask(sql, row -> found.add(reading.read(row)), values).send(entities);
    return found;
  }
}
