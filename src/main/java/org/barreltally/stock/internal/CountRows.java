package org.barreltally.stock.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.stock.Cause;
import org.barreltally.stock.StockCount;
import org.hibernate.Session;

/** The counts in the database. */
@ApplicationScoped
public class CountRows {

  private final EntityManager entities;
  private final Days days;
  private final RecordedBy recordedBy;

  CountRows(EntityManager entities, Days days, RecordedBy recordedBy) {
    this.entities = entities;
    this.days = days;
    this.recordedBy = recordedBy;
  }

  /** Keeps a count with all its lines. */
  public void keep(StockCount count) {
    entities
        .createNativeQuery(
            "INSERT INTO stock_counts"
                + " (id, place, counted_at, counted_by, movement, recorded_at, recorded_by)"
                + " VALUES (:id, :place, :at, :counter, CAST(:movement AS uuid), :now, :by)")
        .setParameter("id", count.id())
        .setParameter("place", count.place())
        .setParameter("at", count.countedAt())
        .setParameter("counter", count.by())
        .setParameter("movement", count.movement() == null ? null : count.movement().toString())
        .setParameter("now", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
    entities.unwrap(Session.class).doWork(connection -> lines(connection, count));
  }

  private static void lines(Connection connection, StockCount count) throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement(
            "INSERT INTO stock_count_lines (count, container, lot, book, counted, swap_with,"
                + " cause, never_there) VALUES (?, ?, ?, ?, ?, ?, ?, ?)")) {
      for (StockCount.Line line : count.lines()) {
        insert.setObject(1, count.id());
        insert.setString(2, line.container());
        insert.setString(3, line.lot());
        insert.setLong(4, line.book());
        insert.setLong(5, line.counted());
        insert.setString(6, line.suspectedSwap());
        insert.setString(7, line.cause() == null ? null : line.cause().code());
        insert.setBoolean(8, line.neverThere());
        insert.addBatch();
      }
      insert.executeBatch();
    }
  }

  /** Of some items, those that never stood at a place by the book. */
  public Set<UUID> neverAt(String place, Collection<Item> jars) {
    Set<UUID> never = new HashSet<>();
    new Bundle()
        .ask(
            "SELECT j FROM unnest(?::uuid[]) AS j WHERE NOT EXISTS"
                + " (SELECT 1 FROM entries e WHERE e.place = ? AND e.item = j)",
            row -> never.add(row.getObject(1, UUID.class)),
            Column.of("uuid", jars, Item::id),
            place)
        .send(entities);
    return never;
  }

  /** Pieces that came to a place after an instant, less those that left, by item. */
  public Map<UUID, Long> movedAfter(Instant at, String place, Collection<Item> jars) {
    Map<UUID, Long> moved = new HashMap<>();
    new Bundle()
        .ask(
            "SELECT e.item, sum(e.amount) FROM entries e JOIN movements m ON m.id = e.movement"
                + " WHERE e.place = ? AND e.item = ANY (?::uuid[]) AND m.happened_at > ?"
                + " GROUP BY e.item",
            row -> moved.put(row.getObject(1, UUID.class), row.getLong(2)),
            place,
            Column.of("uuid", jars, Item::id),
            at)
        .send(entities);
    return moved;
  }

  /** The count of that id, its lines by size and lot. */
  public Optional<StockCount> find(UUID id) {
    List<?> found =
        entities
            .createNativeQuery(
                "SELECT place, counted_at, counted_by, movement FROM stock_counts WHERE id = :id",
                Tuple.class)
            .setParameter("id", id)
            .getResultList();
    return found.stream().map(Tuple.class::cast).map(row -> count(id, row)).findFirst();
  }

  private StockCount count(UUID id, Tuple row) {
    List<?> lines =
        entities
            .createNativeQuery(
                "SELECT container, lot, book, counted, swap_with, cause, never_there FROM stock_count_lines"
                    + " WHERE count = :id ORDER BY container, lot",
                Tuple.class)
            .setParameter("id", id)
            .getResultList();
    return new StockCount(
        id,
        row.get("place", String.class),
        row.get("counted_at", Instant.class),
        row.get("counted_by", String.class),
        row.get("movement", UUID.class),
        lines.stream().map(Tuple.class::cast).map(CountRows::line).toList());
  }

  private static StockCount.Line line(Tuple row) {
    String cause = row.get("cause", String.class);
    return new StockCount.Line(
        row.get("container", String.class),
        row.get("lot", String.class),
        row.get("book", Long.class),
        row.get("counted", Long.class),
        row.get("swap_with", String.class),
        cause == null ? null : Cause.valueOf(cause.toUpperCase(Locale.ROOT)),
        row.get("never_there", Boolean.class));
  }
}
