package org.barreltally.ledger.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;

/**
 * What a posting must know of the items and places it touches, read after their rows are locked.
 */
final class ItemFacts {

  record Fact(String lot, String container, String grade, boolean held) {}

  private final Map<UUID, Fact> items = new HashMap<>();
  private final Map<String, String> placeKinds = new HashMap<>();

  void readItems(ResultSet rows) throws SQLException {
    while (rows.next()) {
      items.put(
          rows.getObject(1, UUID.class),
          new Fact(rows.getString(2), rows.getString(3), rows.getString(4), rows.getBoolean(5)));
    }
  }

  void readPlaces(ResultSet rows) throws SQLException {
    while (rows.next()) {
      placeKinds.put(rows.getString(1), rows.getString(2));
    }
  }

  Fact of(UUID item) {
    return items.get(item);
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
      String kind = placeKinds.get(place.apply(key));
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
