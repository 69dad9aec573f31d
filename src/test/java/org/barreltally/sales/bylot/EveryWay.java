package org.barreltally.sales.bylot;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Tries every way in which the pieces of every carrying can be of the lots, one piece group after
 * the other, and keeps the least and most sold. Written apart from what it checks, and slow.
 */
final class EveryWay {

  private final List<TableJars> tables;
  private final List<Unlotted> carried;
  private final List<String> lots;
  final Map<String, Bounds> sold = new TreeMap<>();
  final Map<String, Bounds> standing = new TreeMap<>();
  long ways;

  EveryWay(List<TableJars> tables, List<Unlotted> carried) {
    this.tables = tables;
    this.carried = carried;
    TreeSet<String> all = new TreeSet<>();
    tables.forEach(t -> all.addAll(t.left().keySet()));
    tables.forEach(t -> all.addAll(t.soldByLot().keySet()));
    this.lots = new ArrayList<>(all);
    Map<String, Long> left = new TreeMap<>();
    Map<String, Long> gone = new TreeMap<>();
    for (TableJars table : tables) {
      for (String lot : lots) {
        left.put(table.place() + lot, table.left().getOrDefault(lot, 0L));
        gone.put(table.place() + lot, table.soldByLot().getOrDefault(lot, 0L));
      }
    }
    carry(0, 0, carried.isEmpty() ? 0 : carried.get(0).count(), left, gone);
  }

  /**
   * Gives some of carrying {@code c} to lot number {@code l}; {@code open} pieces are not given.
   */
  private void carry(int c, int l, long open, Map<String, Long> left, Map<String, Long> gone) {
    if (c == carried.size()) {
      end(left, gone);
      return;
    }
    if (l == lots.size()) {
      if (open == 0) {
        carry(c + 1, 0, c + 1 < carried.size() ? carried.get(c + 1).count() : 0, left, gone);
      }
      return;
    }
    Unlotted way = carried.get(c);
    String lot = lots.get(l);
    for (long pieces = 0; pieces <= open; pieces++) {
      if (pieces > 0 && way.lots() != null && !way.lots().contains(lot)) {
        break;
      }
      Map<String, Long> leftThen = new TreeMap<>(left);
      Map<String, Long> goneThen = new TreeMap<>(gone);
      leftThen.merge(way.from() + lot, -pieces, Long::sum);
      if (tables.stream().anyMatch(t -> t.place().equals(way.to()))) {
        leftThen.merge(way.to() + lot, pieces, Long::sum);
      } else if (way.to().equals("customer")) {
        goneThen.merge(way.from() + lot, pieces, Long::sum);
      }
      carry(c, l + 1, open - pieces, leftThen, goneThen);
    }
  }

  private void end(Map<String, Long> left, Map<String, Long> gone) {
    if (left.values().stream().anyMatch(pieces -> pieces < 0)) {
      return;
    }
    ways++;
    for (TableJars table : tables) {
      for (String lot : lots) {
        String key = table.place() + lot;
        long counted = table.counted() ? left.get(key) : 0;
        sold.merge(key, Bounds.exactly(gone.get(key) + counted), Bounds::or);
        standing.merge(key, Bounds.exactly(left.get(key) - counted), Bounds::or);
      }
    }
  }
}
