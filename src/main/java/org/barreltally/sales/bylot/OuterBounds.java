package org.barreltally.sales.bylot;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Bounds that surely hold, though narrower ones may: pieces of each lot in each carrying are
 * narrowed one after the other until nothing changes. For tables that exchanged too much to try
 * everything.
 */
final class OuterBounds {

  private static final int ROUNDS_MAX = 200;

  private final Telling telling;
  private final List<String> lots;
  private final long[][] least;
  private final long[][] most;
  private boolean changed;
  private boolean fits = true;

  private OuterBounds(Telling telling) {
    this.telling = telling;
    this.lots = telling.lots();
    int ways = telling.carried().size();
    this.least = new long[ways][lots.size()];
    this.most = new long[ways][lots.size()];
    for (int c = 0; c < ways; c++) {
      Unlotted carried = telling.carried().get(c);
      for (int l = 0; l < lots.size(); l++) {
        most[c][l] = carried.canBe(lots.get(l)) ? carried.count() : 0;
      }
    }
  }

  /** Empty if nothing fits what was told; a misfit may also stay unseen. */
  static Optional<SoldByLot> of(Telling telling) {
    OuterBounds bounds = new OuterBounds(telling);
    int rounds = 0;
    do {
      bounds.changed = false;
      bounds.narrowByCount();
      bounds.narrowByTable();
    } while (bounds.changed && bounds.fits && ++rounds < ROUNDS_MAX);
    return bounds.fits ? Optional.of(bounds.result()) : Optional.empty();
  }

  private void narrowByCount() {
    for (int c = 0; c < least.length; c++) {
      long count = telling.carried().get(c).count();
      long allLeast = sum(least[c]);
      long allMost = sum(most[c]);
      for (int l = 0; l < lots.size(); l++) {
        narrow(c, l, count - (allMost - most[c][l]), count - (allLeast - least[c][l]));
      }
      fits &= sum(least[c]) <= count && count <= sum(most[c]);
    }
  }

  /**
   * What leaves a table of a lot is at most what it has and gets; what it gets is at least that.
   */
  private void narrowByTable() {
    for (TableJars table : telling.tables()) {
      for (int l = 0; l < lots.size(); l++) {
        long slack = mostLeft(table, l);
        fits &= slack >= 0;
        for (int c = 0; c < least.length; c++) {
          Unlotted way = telling.carried().get(c);
          if (table.place().equals(way.from())) {
            narrow(c, l, least[c][l], least[c][l] + slack);
          } else if (table.place().equals(way.to())) {
            narrow(c, l, most[c][l] - slack, most[c][l]);
          }
        }
      }
    }
  }

  private long mostLeft(TableJars table, int l) {
    return left(table, l, most, least);
  }

  private long left(TableJars table, int l, long[][] coming, long[][] going) {
    long left = table.left(lots.get(l));
    for (int c = 0; c < least.length; c++) {
      Unlotted way = telling.carried().get(c);
      if (table.place().equals(way.to())) {
        left += coming[c][l];
      } else if (table.place().equals(way.from())) {
        left -= going[c][l];
      }
    }
    return left;
  }

  private void narrow(int c, int l, long atLeast, long atMost) {
    if (atLeast > least[c][l]) {
      least[c][l] = atLeast;
      changed = true;
    }
    if (atMost < most[c][l]) {
      most[c][l] = atMost;
      changed = true;
    }
    fits &= least[c][l] <= most[c][l];
  }

  private static long sum(long[] pieces) {
    long sum = 0;
    for (long p : pieces) {
      sum += p;
    }
    return sum;
  }

  private SoldByLot result() {
    Map<String, Map<String, Bounds>> sold = new TreeMap<>();
    Map<String, Map<String, Bounds>> standing = new TreeMap<>();
    for (TableJars table : telling.tables()) {
      for (int l = 0; l < lots.size(); l++) {
        Bounds left = new Bounds(Math.max(0, left(table, l, least, most)), mostLeft(table, l));
        Bounds gone = soldUnlotted(table, l);
        Bounds named = Bounds.exactly(table.soldByLot(lots.get(l)));
        put(sold, table, l, named.plus(gone).plus(table.counted() ? left : Bounds.exactly(0)));
        put(standing, table, l, table.counted() ? Bounds.exactly(0) : left);
      }
    }
    return new SoldByLot(sold, standing, List.of(), false);
  }

  private Bounds soldUnlotted(TableJars table, int l) {
    Bounds gone = Bounds.exactly(0);
    for (int c = 0; c < least.length; c++) {
      Unlotted way = telling.carried().get(c);
      if (table.place().equals(way.from()) && Unlotted.SOLD.equals(way.to())) {
        gone = gone.plus(new Bounds(least[c][l], most[c][l]));
      }
    }
    return gone;
  }

  private void put(Map<String, Map<String, Bounds>> all, TableJars table, int l, Bounds bounds) {
    all.computeIfAbsent(table.place(), p -> new TreeMap<>()).put(lots.get(l), bounds);
  }
}
