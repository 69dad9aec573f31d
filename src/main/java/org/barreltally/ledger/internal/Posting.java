package org.barreltally.ledger.internal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.NotThatMuchThere;
import org.barreltally.ledger.Transfer;

/**
 * Writes one movement in two round trips, however many entries it has: one makes the missing
 * balance rows, locks all rows in sorted order and reads the items; one writes header, balances,
 * entries and availability. See src/docs/adr for the measurements behind it.
 */
public final class Posting {

  /**
   * Rows that other writers may want too are locked in this order, so no two can wait in a ring. A
   * new row waits for whoever has locked its item (see {@link JarLocks}) before it is made.
   */
  private static final String LOCK =
      """
      INSERT INTO balances (place, item, amount, seq, below_zero)
        SELECT p.code, i.id, 0, 0, p.below_zero
        FROM unnest(?::text[], ?::uuid[]) AS w (place, item)
          JOIN places p ON p.code = w.place JOIN items i ON i.id = w.item
        WHERE NOT EXISTS (SELECT 1 FROM balances b WHERE b.place = w.place AND b.item = w.item)
        ORDER BY i.id, p.code FOR KEY SHARE OF i ON CONFLICT DO NOTHING;
      SELECT b.place, b.item, b.amount, b.seq, b.below_zero
        FROM balances b JOIN unnest(?::text[], ?::uuid[]) AS w (place, item)
          ON b.place = w.place AND b.item = w.item
        ORDER BY b.place, b.item FOR UPDATE OF b;
      SELECT i.id, i.lot, i.container, i.grade, i.held FROM items i WHERE i.id = ANY (?::uuid[]);
      SELECT code, kind FROM places WHERE code = ANY (?::text[])
      """;

  private static final String WRITE =
      """
      WITH header AS (
        INSERT INTO movements
          (id, kind, happened_at, recorded_at, book_year, recorded_by, reason, reverses, entry_count)
        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) RETURNING id
      ), fresh AS (
        SELECT * FROM unnest(?::smallint[], ?::text[], ?::uuid[], ?::bigint[], ?::bigint[], ?::bigint[])
          AS f (line, place, item, amount, after, seq)
      ), kept AS (
        UPDATE balances b SET amount = f.after, seq = f.seq FROM fresh f
        WHERE b.place = f.place AND b.item = f.item
      ), promised AS (
        INSERT INTO availability AS a (container, grade, on_hand, held, reserved, out)
          SELECT container, grade, on_hand, held, 0, out
          FROM unnest(?::text[], ?::text[], ?::bigint[], ?::bigint[], ?::bigint[])
            AS d (container, grade, on_hand, held, out)
          ORDER BY container, grade
          ON CONFLICT (container, grade) DO UPDATE SET
            on_hand = a.on_hand + excluded.on_hand, held = a.held + excluded.held,
            out = a.out + excluded.out
      )
      INSERT INTO entries (movement, line, place, item, amount, balance_after, seq)
        SELECT header.id, f.line, f.place, f.item, f.amount, f.after, f.seq FROM header, fresh f
      """;

  private record Key(String place, UUID item) implements Comparable<Key> {
    @Override
    public int compareTo(Key other) {
      int byPlace = place.compareTo(other.place);
      return byPlace != 0 ? byPlace : item.compareTo(other.item);
    }
  }

  private record Standing(long amount, long seq, boolean belowZero) {}

  private final UUID id;
  private final Movement movement;
  private final UUID reverses;
  private final Instant recordedAt;
  private final int bookYear;
  private final UUID recordedBy;

  public Posting(
      UUID id,
      Movement movement,
      UUID reverses,
      Instant recordedAt,
      int bookYear,
      UUID recordedBy) {
    this.id = id;
    this.movement = movement;
    this.reverses = reverses;
    this.recordedAt = recordedAt;
    this.bookYear = bookYear;
    this.recordedBy = recordedBy;
  }

  public UUID id() {
    return id;
  }

  /**
   * Writes the movement with the connection of the running transaction.
   *
   * @throws NotThatMuchThere if a balance would go below zero where it may not
   */
  public void write(Connection connection) throws SQLException {
    SortedMap<Key, Long> net = net();
    if (net.isEmpty()) {
      throw new IllegalArgumentException("a movement that moves nothing");
    }
    SortedMap<Key, Standing> standing = new TreeMap<>();
    ItemFacts facts = lock(connection, net, standing);
    judge(net, standing, facts);
    insert(connection, net, standing, facts.changes(net.keySet(), Key::place, Key::item, net::get));
  }

  /** What each place gains or loses of each item; a movement has one entry for each. */
  private SortedMap<Key, Long> net() {
    SortedMap<Key, Long> net = new TreeMap<>();
    for (Transfer t : movement.transfers()) {
      net.merge(new Key(t.from(), t.item()), -t.amount(), Math::addExact);
      net.merge(new Key(t.to(), t.item()), t.amount(), Math::addExact);
    }
    net.values().removeIf(amount -> amount == 0);
    return net;
  }

  private ItemFacts lock(
      Connection connection, SortedMap<Key, Long> net, SortedMap<Key, Standing> standing)
      throws SQLException {
    Object[] places = net.keySet().stream().map(Key::place).toArray();
    Object[] items = net.keySet().stream().map(Key::item).toArray();
    try (PreparedStatement lock = connection.prepareStatement(LOCK)) {
      lock.setArray(1, connection.createArrayOf("text", places));
      lock.setArray(2, connection.createArrayOf("uuid", items));
      lock.setArray(3, connection.createArrayOf("text", places));
      lock.setArray(4, connection.createArrayOf("uuid", items));
      lock.setArray(5, connection.createArrayOf("uuid", items));
      lock.setArray(6, connection.createArrayOf("text", places));
      lock.execute();
      lock.getMoreResults();
      try (ResultSet rows = lock.getResultSet()) {
        while (rows.next()) {
          standing.put(
              new Key(rows.getString(1), rows.getObject(2, UUID.class)),
              new Standing(rows.getLong(3), rows.getLong(4), rows.getBoolean(5)));
        }
      }
      ItemFacts facts = new ItemFacts();
      lock.getMoreResults();
      try (ResultSet rows = lock.getResultSet()) {
        facts.readItems(rows);
      }
      lock.getMoreResults();
      try (ResultSet rows = lock.getResultSet()) {
        facts.readPlaces(rows);
      }
      return facts;
    }
  }

  private static void judge(
      SortedMap<Key, Long> net, SortedMap<Key, Standing> standing, ItemFacts facts) {
    net.forEach(
        (key, amount) -> {
          Standing before = standing.get(key);
          if (before == null) {
            throw new IllegalArgumentException("no such place or item: " + key);
          }
          if (before.amount() + amount < 0 && amount < 0 && !before.belowZero()) {
            ItemFacts.Fact fact = facts.of(key.item());
            throw new NotThatMuchThere(
                key.place(), fact.lot(), fact.container(), before.amount(), -amount);
          }
        });
  }

  private void insert(
      Connection connection,
      SortedMap<Key, Long> net,
      SortedMap<Key, Standing> standing,
      List<PoolChange> changes)
      throws SQLException {
    List<Short> lines = new ArrayList<>();
    List<Long> afters = new ArrayList<>();
    List<Long> seqs = new ArrayList<>();
    net.forEach(
        (key, amount) -> {
          lines.add((short) (lines.size() + 1));
          afters.add(Math.addExact(standing.get(key).amount(), amount));
          seqs.add(standing.get(key).seq() + 1);
        });
    try (PreparedStatement write = connection.prepareStatement(WRITE)) {
      write.setObject(1, id);
      write.setString(2, movement.kind().code());
      write.setObject(3, OffsetDateTime.ofInstant(movement.happenedAt(), ZoneOffset.UTC));
      write.setObject(4, OffsetDateTime.ofInstant(recordedAt, ZoneOffset.UTC));
      write.setInt(5, bookYear);
      write.setObject(6, recordedBy);
      write.setString(7, movement.reason());
      write.setObject(8, reverses, Types.OTHER);
      write.setInt(9, net.size());
      write.setArray(10, connection.createArrayOf("smallint", lines.toArray()));
      write.setArray(
          11, connection.createArrayOf("text", net.keySet().stream().map(Key::place).toArray()));
      write.setArray(
          12, connection.createArrayOf("uuid", net.keySet().stream().map(Key::item).toArray()));
      write.setArray(13, connection.createArrayOf("bigint", net.values().toArray()));
      write.setArray(14, connection.createArrayOf("bigint", afters.toArray()));
      write.setArray(15, connection.createArrayOf("bigint", seqs.toArray()));
      PoolChange.bind(write, 16, connection, changes);
      write.executeUpdate();
    }
  }
}
