package org.barreltally.ledger.internal;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;
import org.barreltally.ledger.Item;

/**
 * What a posting must know of the items and places it touches, read after their rows are locked.
 */
final class ItemFacts {

  private static final String ITEMS =
      "SELECT id, lot, container, grade, held FROM items WHERE id = ANY (?::uuid[])";
  private static final String PLACES =
      "SELECT code, kind, below_zero FROM places WHERE code = ANY (?::text[])";

  /** What a refusal says of an item, and its pool. */
  record Fact(String lot, String container, String grade, boolean held) {}

  /** What a place lets balances do. */
  record PlaceFact(String kind, boolean belowZero) {}

  private final Map<UUID, Fact> items = new HashMap<>();
  private final Map<String, PlaceFact> places = new HashMap<>();

  /** Asks for items that the book has, and for places. */
  void ask(Collection<UUID> knownItems, Collection<String> codes, Bundle ask) {
    ask.ask(
        ITEMS,
        row ->
            items.put(
                row.getObject(1, UUID.class),
                new Fact(row.getString(2), row.getString(3), row.getString(4), row.getBoolean(5))),
        Column.of("uuid", knownItems));
    ask.ask(
        PLACES,
        row -> places.put(row.getString(1), new PlaceFact(row.getString(2), row.getBoolean(3))),
        Column.of("text", codes));
  }

  /** An item that is made together with the movement. */
  void know(Item made) {
    items.put(made.id(), new Fact(made.lot(), made.container(), made.grade(), made.held()));
  }

  /** Null if the book has no such item. */
  Fact of(UUID item) {
    return items.get(item);
  }

  /** Null if the book has no such place. */
  PlaceFact at(String place) {
    return places.get(place);
  }

  /** What the entries do to the pools: only jars of a known grade at own places count. */
  <K> List<PoolChange> changes(
      Collection<K> keys,
      Function<K, String> place,
      Function<K, UUID> item,
      Function<K, Long> amount) {
    Map<String, PoolChange> byPool = new TreeMap<>();
    for (K key : keys) {
      Fact fact = of(item.apply(key));
      String kind = at(place.apply(key)).kind();
      boolean home = "home".equals(kind);
      boolean out = "out".equals(kind);
      if (fact.container() == null || fact.grade() == null || !(home || out)) {
        continue;
      }
      long pieces = amount.apply(key);
      byPool.merge(
          fact.container() + "\n" + fact.grade(),
          new PoolChange(
              fact.container(),
              fact.grade(),
              pieces,
              home && fact.held() ? pieces : 0,
              out ? pieces : 0),
          PoolChange::plus);
    }
    return List.copyOf(byPool.values());
  }
}
