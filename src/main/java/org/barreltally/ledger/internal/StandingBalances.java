package org.barreltally.ledger.internal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;

/**
 * The balances that a posting changes: locked in sorted order, followed in memory, written once.
 */
final class StandingBalances {

  /** Missing rows of known items. Each waits for whoever has locked its item, see JarLocks. */
  private static final String MAKE =
      """
      INSERT INTO balances (place, item, amount, seq, below_zero, container)
        SELECT p.code, i.id, 0, 0, p.below_zero, i.container
        FROM unnest(?::text[], ?::uuid[]) AS w (place, item)
          JOIN places p ON p.code = w.place JOIN items i ON i.id = w.item
        WHERE NOT EXISTS (SELECT 1 FROM balances b WHERE b.place = w.place AND b.item = w.item)
        ORDER BY i.id, p.code FOR KEY SHARE OF i ON CONFLICT DO NOTHING
      """;

  /** Rows that other writers may want too are locked in this order: no two can wait in a ring. */
  private static final String LOCK =
      """
      SELECT b.place, b.item, b.amount, b.seq, b.below_zero
        FROM balances b JOIN unnest(?::text[], ?::uuid[]) AS w (place, item)
          ON b.place = w.place AND b.item = w.item
        ORDER BY b.place, b.item FOR UPDATE OF b
      """;

  private static final String KEEP =
      """
      UPDATE balances b SET amount = f.amount, seq = f.seq
        FROM unnest(?::text[], ?::uuid[], ?::bigint[], ?::bigint[]) AS f (place, item, amount, seq)
        WHERE b.place = f.place AND b.item = f.item
      """;

  private static final String OPEN =
      """
      INSERT INTO balances (place, item, amount, seq, below_zero, container)
        SELECT o.*, i.container
        FROM unnest(?::text[], ?::uuid[], ?::bigint[], ?::bigint[], ?::boolean[]) AS o (place, item)
          JOIN items i ON i.id = o.item
      """;

  /**
   * What stands at one place of one item.
   *
   * @param seq how many entries made it
   * @param belowZero whether it may be less than nothing
   */
  record Standing(long amount, long seq, boolean belowZero) {
    Standing plus(long change) {
      return new Standing(Math.addExact(amount, change), seq + 1, belowZero);
    }
  }

  private final Set<UUID> made;
  private final SortedMap<BalanceKey, Standing> standing = new TreeMap<>();

  /**
   * @param made items made in this transaction: nobody else knows them, so their rows need no lock
   */
  StandingBalances(Set<UUID> made) {
    this.made = made;
  }

  /** Locks the rows of items that the book has and reads them. */
  void lock(Collection<BalanceKey> keys, Bundle ask) {
    Column places = Column.of("text", keys, BalanceKey::place);
    Column items = Column.of("uuid", keys, BalanceKey::item);
    ask.add(MAKE, places, items);
    ask.ask(
        LOCK,
        row ->
            standing.put(
                new BalanceKey(row.getString(1), row.getObject(2, UUID.class)),
                new Standing(row.getLong(3), row.getLong(4), row.getBoolean(5))),
        places,
        items);
  }

  /** Nothing stands yet of an item that is being made. */
  void begin(BalanceKey key, boolean belowZero) {
    standing.putIfAbsent(key, new Standing(0, 0, belowZero));
  }

  boolean isMade(BalanceKey key) {
    return made.contains(key.item());
  }

  /** Null if there is no such place or item. */
  Standing of(BalanceKey key) {
    return standing.get(key);
  }

  void put(BalanceKey key, Standing after) {
    standing.put(key, after);
  }

  /** Writes what stands now. */
  void write(Bundle write) {
    Map<Boolean, List<Map.Entry<BalanceKey, Standing>>> byAge =
        standing.entrySet().stream().collect(Collectors.partitioningBy(e -> isMade(e.getKey())));
    if (!byAge.get(false).isEmpty()) {
      write.add(KEEP, columns(byAge.get(false)).toArray());
    }
    if (!byAge.get(true).isEmpty()) {
      List<Column> columns = columns(byAge.get(true));
      columns.add(Column.of("boolean", byAge.get(true), row -> row.getValue().belowZero()));
      write.add(OPEN, columns.toArray());
    }
  }

  private static List<Column> columns(List<Map.Entry<BalanceKey, Standing>> rows) {
    List<Column> columns = new ArrayList<>();
    columns.add(Column.of("text", rows, row -> row.getKey().place()));
    columns.add(Column.of("uuid", rows, row -> row.getKey().item()));
    columns.add(Column.of("bigint", rows, row -> row.getValue().amount()));
    columns.add(Column.of("bigint", rows, row -> row.getValue().seq()));
    return columns;
  }
}
