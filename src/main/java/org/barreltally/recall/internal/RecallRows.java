package org.barreltally.recall.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.recall.Recall;

/** The recalls in the database. */
@ApplicationScoped
public class RecallRows {

  private static final String RECALL =
      """
      SELECT r.id, r.lot, r.barrel, r.reason, r.rehearsal, r.recorded_at, e.reason, e.recorded_at
      FROM recalls r LEFT JOIN recall_ends e ON e.recall = r.id
      """;

  private static final String TOUCHED =
      """
      SELECT t.recall, t.lot, t.share FROM recall_lots t JOIN recalls r ON r.id = t.recall
      WHERE t.recall = ANY (?::uuid[]) ORDER BY t.recall, t.lot <> r.lot, t.share DESC, t.lot
      """;

  private static final String OPEN =
      """
      SELECT r.id FROM recall_lots t JOIN recalls r ON r.id = t.recall
      WHERE t.lot = ? AND NOT r.rehearsal
        AND NOT EXISTS (SELECT 1 FROM recall_ends e WHERE e.recall = r.id)
      ORDER BY r.id LIMIT 1
      """;

  private final EntityManager entities;
  private final RecordedBy recordedBy;

  RecallRows(EntityManager entities, RecordedBy recordedBy) {
    this.entities = entities;
    this.recordedBy = recordedBy;
  }

  public void keep(Recall recall) {
    new Bundle()
        .add(
            "INSERT INTO recalls (id, lot, barrel, reason, rehearsal, recorded_at, recorded_by)"
                + " VALUES (?, ?, ?, ?, ?, ?, ?)",
            recall.id(),
            recall.lot(),
            recall.barrel(),
            recall.reason(),
            recall.rehearsal(),
            recall.startedAt(),
            recordedBy.user())
        .add(
            "INSERT INTO recall_lots (recall, lot, share)"
                + " SELECT ?::uuid, t.* FROM unnest(?::text[], ?::float8[]) AS t",
            recall.id(),
            Column.of("text", recall.touched(), Recall.Touched::lot),
            Column.of("float8", recall.touched(), Recall.Touched::share))
        .send(entities);
  }

  public void end(UUID id, Recall.End end) {
    new Bundle()
        .add(
            "INSERT INTO recall_ends (recall, reason, recorded_at, recorded_by)"
                + " VALUES (?, ?, ?, ?)",
            id,
            end.reason(),
            end.at(),
            recordedBy.user())
        .send(entities);
  }

  /** The recall of that id. */
  public Optional<Recall> find(UUID id) {
    return read("WHERE r.id = ?", id).stream().findFirst();
  }

  /** The recall of that id, kept from being ended by another until this transaction ends. */
  public Optional<Recall> locked(UUID id) {
    new Bundle()
        .add("SELECT pg_advisory_xact_lock(hashtextextended('recall ' || ?::text, 0))", id)
        .send(entities);
    return find(id);
  }

  /** In the order they began, after one of them (or null), at most so many. */
  public List<Recall> list(UUID after, int limit) {
    return read(
        "WHERE r.id > coalesce(?::uuid, '00000000-0000-0000-0000-000000000000') ORDER BY r.id"
            + " LIMIT ?",
        after,
        limit);
  }

  /** An open recall that touched a lot. */
  public Optional<UUID> open(String lot) {
    List<UUID> found = new ArrayList<>();
    new Bundle().ask(OPEN, row -> found.add(row.getObject(1, UUID.class)), lot).send(entities);
    return found.stream().findFirst();
  }

  private List<Recall> read(String which, Object... values) {
    Map<UUID, List<Recall.Touched>> touched = new HashMap<>();
    List<Recall> heads = new ArrayList<>();
    new Bundle().ask(RECALL + which, row -> heads.add(head(row)), values).send(entities);
    new Bundle()
        .ask(
            TOUCHED,
            row ->
                touched
                    .computeIfAbsent(row.getObject(1, UUID.class), k -> new ArrayList<>())
                    .add(new Recall.Touched(row.getString(2), row.getDouble(3))),
            Column.of("uuid", heads, Recall::id))
        .send(entities);
    return heads.stream()
        .map(
            r ->
                new Recall(
                    r.id(),
                    r.lot(),
                    r.barrel(),
                    r.reason(),
                    r.rehearsal(),
                    r.startedAt(),
                    touched.getOrDefault(r.id(), List.of()),
                    r.end()))
        .toList();
  }

  private static Recall head(ResultSet row) throws SQLException {
    Instant ended = instant(row, 8);
    return new Recall(
        row.getObject(1, UUID.class),
        row.getString(2),
        row.getString(3),
        row.getString(4),
        row.getBoolean(5),
        instant(row, 6),
        List.of(),
        ended == null ? null : new Recall.End(row.getString(7), ended));
  }

  private static Instant instant(ResultSet row, int column) throws SQLException {
    OffsetDateTime at = row.getObject(column, OffsetDateTime.class);
    return at == null ? null : at.toInstant();
  }
}
