package org.barreltally.ledger.internal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.NotThatMuchThere;
import org.barreltally.ledger.Transfer;

/**
 * Writes movements in two round trips, however many there are and however many entries they have:
 * one makes the missing balance rows, locks all rows in sorted order and reads the items; one
 * writes headers, balances, entries and availability. See src/docs/adr for the measurements behind
 * it.
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
          (id, kind, happened_at, book_year, reason, reverses, entry_count, recorded_at, recorded_by)
        SELECT h.*, ?::timestamptz, ?::uuid
        FROM unnest(?::uuid[], ?::text[], ?::timestamptz[], ?::int[], ?::text[], ?::uuid[], ?::smallint[])
          AS h (id, kind, happened_at, book_year, reason, reverses, entry_count)
      ), kept AS (
        UPDATE balances b SET amount = f.after, seq = f.seq
        FROM unnest(?::text[], ?::uuid[], ?::bigint[], ?::bigint[]) AS f (place, item, after, seq)
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
        SELECT * FROM unnest(?::uuid[], ?::smallint[], ?::text[], ?::uuid[], ?::bigint[],
          ?::bigint[], ?::bigint[])
      """;

  private record Key(String place, UUID item) implements Comparable<Key> {
    @Override
    public int compareTo(Key other) {
      int byPlace = place.compareTo(other.place);
      return byPlace != 0 ? byPlace : item.compareTo(other.item);
    }
  }

  private record Standing(long amount, long seq, boolean belowZero) {}

  /**
   * A movement to be written.
   *
   * @param reverses the movement it takes back; null for none
   */
  public record Draft(UUID id, Movement movement, UUID reverses, int bookYear) {}

  /** An entry with what stands at its place afterwards. */
  private record Entry(UUID movement, int line, Key key, long amount, Standing after) {}

  private final List<Draft> drafts;
  private final Instant recordedAt;
  private final UUID recordedBy;

  /**
   * @param drafts in the order in which they are posted
   */
  public Posting(List<Draft> drafts, Instant recordedAt, UUID recordedBy) {
    this.drafts = List.copyOf(drafts);
    this.recordedAt = recordedAt;
    this.recordedBy = recordedBy;
  }

  /**
   * Writes the movements with the connection of the running transaction, all of them or none.
   *
   * @throws NotThatMuchThere if a balance would go below zero where it may not
   */
  public void write(Connection connection) throws SQLException {
    List<SortedMap<Key, Long>> nets = drafts.stream().map(d -> net(d.movement())).toList();
    if (nets.stream().anyMatch(SortedMap::isEmpty)) {
      throw new IllegalArgumentException("a movement that moves nothing");
    }
    SortedMap<Key, Long> total = new TreeMap<>();
    nets.forEach(net -> net.forEach((key, amount) -> total.merge(key, amount, Math::addExact)));
    SortedMap<Key, Standing> standing = new TreeMap<>();
    ItemFacts facts = lock(connection, total.keySet(), standing);
    List<Entry> entries = new ArrayList<>();
    for (int n = 0; n < drafts.size(); n++) {
      follow(drafts.get(n).id(), nets.get(n), standing, facts, entries);
    }
    insert(
        connection,
        nets,
        entries,
        standing,
        facts.changes(total.keySet(), Key::place, Key::item, total::get));
  }

  /** What each place gains or loses of each item; a movement has one entry for each. */
  private static SortedMap<Key, Long> net(Movement movement) {
    SortedMap<Key, Long> net = new TreeMap<>();
    for (Transfer t : movement.transfers()) {
      net.merge(new Key(t.from(), t.item()), -t.amount(), Math::addExact);
      net.merge(new Key(t.to(), t.item()), t.amount(), Math::addExact);
    }
    net.values().removeIf(amount -> amount == 0);
    return net;
  }

  private ItemFacts lock(Connection connection, Set<Key> keys, SortedMap<Key, Standing> standing)
      throws SQLException {
    Object[] places = keys.stream().map(Key::place).toArray();
    Object[] items = keys.stream().map(Key::item).toArray();
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

  /** Judges a movement after those before it, and lets the balances follow. */
  private static void follow(
      UUID movement,
      SortedMap<Key, Long> net,
      SortedMap<Key, Standing> standing,
      ItemFacts facts,
      List<Entry> entries) {
    int line = 0;
    for (Map.Entry<Key, Long> change : net.entrySet()) {
      Key key = change.getKey();
      long amount = change.getValue();
      Standing before = standing.get(key);
      if (before == null) {
        throw new IllegalArgumentException("no such place or item: " + key);
      }
      Standing after =
          new Standing(
              Math.addExact(before.amount(), amount), before.seq() + 1, before.belowZero());
      if (after.amount() < 0 && amount < 0 && !before.belowZero()) {
        ItemFacts.Fact fact = facts.of(key.item());
        throw new NotThatMuchThere(
            key.place(), fact.lot(), fact.container(), before.amount(), -amount);
      }
      standing.put(key, after);
      entries.add(new Entry(movement, ++line, key, amount, after));
    }
  }

  private void insert(
      Connection connection,
      List<SortedMap<Key, Long>> nets,
      List<Entry> entries,
      SortedMap<Key, Standing> standing,
      List<PoolChange> changes)
      throws SQLException {
    try (PreparedStatement write = connection.prepareStatement(WRITE)) {
      write.setObject(1, OffsetDateTime.ofInstant(recordedAt, ZoneOffset.UTC));
      write.setObject(2, recordedBy);
      Columns columns = new Columns(connection, write, 3);
      columns.add("uuid", drafts, Draft::id);
      columns.add("text", drafts, d -> d.movement().kind().code());
      columns.add("timestamptz", drafts, d -> d.movement().happenedAt().toString());
      columns.add("int", drafts, Draft::bookYear);
      columns.add("text", drafts, d -> d.movement().reason());
      columns.add("uuid", drafts, Draft::reverses);
      columns.add("smallint", nets, SortedMap::size);
      columns.add("text", standing.keySet(), Key::place);
      columns.add("uuid", standing.keySet(), Key::item);
      columns.add("bigint", standing.values(), Standing::amount);
      columns.add("bigint", standing.values(), Standing::seq);
      PoolChange.bind(columns, changes);
      columns.add("uuid", entries, Entry::movement);
      columns.add("smallint", entries, Entry::line);
      columns.add("text", entries, e -> e.key().place());
      columns.add("uuid", entries, e -> e.key().item());
      columns.add("bigint", entries, Entry::amount);
      columns.add("bigint", entries, e -> e.after().amount());
      columns.add("bigint", entries, e -> e.after().seq());
      write.executeUpdate();
    }
  }
}
