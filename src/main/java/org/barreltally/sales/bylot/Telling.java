package org.barreltally.sales.bylot;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The problem in its plain form: pieces of every lot in every carrying without lot, whole and not
 * below zero, such that each carrying is of as many pieces as was told and no table is left with
 * less than nothing of a lot. Carryings between the same places that can be of the same lots are
 * one.
 */
final class Telling {

  private final List<TableJars> tables;
  private final List<Unlotted> carried;
  private final List<String> lots;

  Telling(List<TableJars> tables, List<Unlotted> carried) {
    this.tables = List.copyOf(tables);
    this.carried = merged(carried);
    SortedSet<String> all = new TreeSet<>();
    for (TableJars table : tables) {
      all.addAll(table.left().keySet());
      all.addAll(table.soldByLot().keySet());
    }
    this.lots = List.copyOf(all);
  }

  private static List<Unlotted> merged(List<Unlotted> carried) {
    record Way(String from, String to, Object lots) {}
    Map<Way, Unlotted> ways = new LinkedHashMap<>();
    for (Unlotted c : carried) {
      if (c.count() > 0) {
        ways.merge(
            new Way(c.from(), c.to(), c.lots()),
            c,
            (a, b) -> new Unlotted(a.from(), a.to(), a.count() + b.count(), a.lots()));
      }
    }
    return List.copyOf(ways.values());
  }

  List<TableJars> tables() {
    return tables;
  }

  List<Unlotted> carried() {
    return carried;
  }

  List<String> lots() {
    return lots;
  }

  /** What is left of a lot at a table if so many of it were in each carrying. */
  long left(TableJars table, String lot, long[] of) {
    long left = table.left(lot);
    for (int c = 0; c < of.length; c++) {
      if (table.place().equals(carried.get(c).to())) {
        left += of[c];
      } else if (table.place().equals(carried.get(c).from())) {
        left -= of[c];
      }
    }
    return left;
  }

  boolean fits(String lot, long[] of) {
    return tables.stream().allMatch(table -> left(table, lot, of) >= 0);
  }

  /** How many of a lot were sold at a table if so many of it were in each carrying. */
  long sold(TableJars table, String lot, long[] of) {
    long sold = table.soldByLot(lot) + (table.counted() ? left(table, lot, of) : 0);
    for (int c = 0; c < of.length; c++) {
      Unlotted way = carried.get(c);
      if (table.place().equals(way.from()) && Unlotted.SOLD.equals(way.to())) {
        sold += of[c];
      }
    }
    return sold;
  }

  long standing(TableJars table, String lot, long[] of) {
    return table.counted() ? 0 : left(table, lot, of);
  }

  /** The same with other tables and some more carryings. */
  Telling with(List<TableJars> others, List<Unlotted> more) {
    List<Unlotted> all = new ArrayList<>(carried);
    all.addAll(more);
    return new Telling(others, all);
  }
}
