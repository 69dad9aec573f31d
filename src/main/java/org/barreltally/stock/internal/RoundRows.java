package org.barreltally.stock.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.stock.rounds.CountRound;
import org.barreltally.stock.rounds.CountRound.Jar;
import org.barreltally.stock.rounds.CountRound.Sheet;

/** The counting rounds in the database. */
@ApplicationScoped
public class RoundRows {

  private static final String HEADS =
      """
      SELECT r.id, r.place, r.recorded_at, e.round IS NOT NULL, e.count, e.reason
      FROM count_rounds r LEFT JOIN count_round_ends e ON e.round = r.id
      """;

  private static final String LINES =
      """
      SELECT s.round, s.nth, s.counted_by, s.counted_at, l.container, l.lot, l.counted
      FROM count_sheets s JOIN count_sheet_lines l ON l.round = s.round AND l.nth = s.nth
      WHERE s.round = ANY (?::uuid[]) ORDER BY s.round, s.nth, l.container, l.lot
      """;

  /** A sheet whose lines are being read. */
  private record Draft(int nth, String by, Instant at, Map<Jar, Long> pieces) {}

  private final EntityManager entities;
  private final Days days;
  private final RecordedBy recordedBy;

  RoundRows(EntityManager entities, Days days, RecordedBy recordedBy) {
    this.entities = entities;
    this.days = days;
    this.recordedBy = recordedBy;
  }

  /** Lets nobody else at this until the transaction ends. */
  public void lock(String what) {
    new Bundle()
        .add("SELECT pg_advisory_xact_lock(hashtextextended('count ' || ?::text, 0))", what)
        .send(entities);
  }

  public void keep(CountRound round) {
    new Bundle()
        .add(
            "INSERT INTO count_rounds (id, place, recorded_at, recorded_by) VALUES (?, ?, ?, ?)",
            round.id(),
            round.place(),
            round.openedAt(),
            recordedBy.user())
        .send(entities);
  }

  public void keep(UUID round, Sheet sheet) {
    List<Map.Entry<Jar, Long>> lines = List.copyOf(sheet.pieces().entrySet());
    new Bundle()
        .add(
            "INSERT INTO count_sheets (round, nth, counted_by, counted_at, recorded_at, recorded_by)"
                + " VALUES (?, ?, ?, ?, ?, ?)",
            round,
            sheet.nth(),
            sheet.by(),
            sheet.countedAt(),
            days.now(),
            recordedBy.user())
        .add(
            "INSERT INTO count_sheet_lines (round, nth, container, lot, counted)"
                + " SELECT ?::uuid, ?::smallint, l.* FROM unnest(?::text[], ?::text[], ?::bigint[]) AS l",
            round,
            sheet.nth(),
            Column.of("text", lines, line -> line.getKey().container()),
            Column.of("text", lines, line -> line.getKey().lot()),
            Column.of("bigint", lines, Map.Entry::getValue))
        .send(entities);
  }

  public void end(UUID round, CountRound.End end) {
    new Bundle()
        .add(
            "INSERT INTO count_round_ends (round, count, reason, recorded_at, recorded_by)"
                + " VALUES (?, ?::uuid, ?::text, ?, ?)",
            round,
            end.count(),
            end.reason(),
            days.now(),
            recordedBy.user())
        .send(entities);
  }

  /** The open round of a place. */
  public Optional<UUID> openAt(String place) {
    return read("WHERE e.round IS NULL AND r.place = ? ORDER BY r.id LIMIT 1", place).stream()
        .map(CountRound::id)
        .findFirst();
  }

  public Optional<CountRound> find(UUID id) {
    return read("WHERE r.id = ?", id).stream().findFirst();
  }

  public List<CountRound> list(UUID after, int limit) {
    return read(
        "WHERE r.id > coalesce(?::uuid, '00000000-0000-0000-0000-000000000000') ORDER BY r.id"
            + " LIMIT ?",
        after,
        limit);
  }

  private List<CountRound> read(String which, Object... values) {
    List<CountRound> heads = new ArrayList<>();
    Map<UUID, Map<Integer, Draft>> sheets = new LinkedHashMap<>();
    new Bundle().ask(HEADS + which, row -> heads.add(head(row)), values).send(entities);
    new Bundle()
        .ask(LINES, row -> line(row, sheets), Column.of("uuid", heads, CountRound::id))
        .send(entities);
    return heads.stream()
        .map(
            h ->
                new CountRound(
                    h.id(),
                    h.place(),
                    h.openedAt(),
                    sheets.getOrDefault(h.id(), Map.of()).values().stream()
                        .map(d -> new Sheet(d.nth(), d.by(), d.at(), d.pieces()))
                        .toList(),
                    h.end()))
        .toList();
  }

  private static CountRound head(ResultSet row) throws SQLException {
    return new CountRound(
        row.getObject(1, UUID.class),
        row.getString(2),
        row.getObject(3, OffsetDateTime.class).toInstant(),
        List.of(),
        row.getBoolean(4)
            ? new CountRound.End(row.getObject(5, UUID.class), row.getString(6))
            : null);
  }

  private static void line(ResultSet row, Map<UUID, Map<Integer, Draft>> sheets)
      throws SQLException {
    int nth = row.getInt(2);
    Map<Integer, Draft> ofRound =
        sheets.computeIfAbsent(row.getObject(1, UUID.class), k -> new TreeMap<>());
    if (!ofRound.containsKey(nth)) {
      ofRound.put(
          nth,
          new Draft(
              nth,
              row.getString(3),
              row.getObject(4, OffsetDateTime.class).toInstant(),
              new HashMap<>()));
    }
    ofRound.get(nth).pieces().put(new Jar(row.getString(5), row.getString(6)), row.getLong(7));
  }
}
