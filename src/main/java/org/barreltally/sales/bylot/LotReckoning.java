package org.barreltally.sales.bylot;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Reckons how many jars of each lot were sold, for one size of jar over all tables that exchanged
 * jars.
 *
 * <p>Lots sold = out − back − broken − sampled − moved, where all of it was told by lot. Where jars
 * were sold or carried without lot, it is the least and the most over all ways in which pieces of
 * the lots can have been in them, such that no table ends with less than nothing of a lot. The
 * order of events is not used, since the clocks of several devices are not trusted that far.
 *
 * <p>Where nothing fits, because more of a lot was told to have gone than came, both tellings are
 * allowed: that the jars were of that lot (and as many of other lots did not go), or that they were
 * of the other lots; and the lot is listed.
 */
public final class LotReckoning {

  private LotReckoning() {}

  public static SoldByLot of(List<TableJars> tables, List<Unlotted> carried) {
    Telling telling = new Telling(tables, carried);
    return solve(telling).orElseGet(() -> contradictory(telling));
  }

  private static Optional<SoldByLot> solve(Telling telling) {
    return SharpBounds.canTry(telling) ? SharpBounds.of(telling) : OuterBounds.of(telling);
  }

  private static SoldByLot contradictory(Telling told) {
    List<Contradiction> found = new ArrayList<>();
    List<TableJars> upheld = new ArrayList<>();
    List<TableJars> withdrawn = new ArrayList<>();
    List<Unlotted> notGone = new ArrayList<>();
    List<Unlotted> otherLots = new ArrayList<>();
    for (TableJars table : told.tables()) {
      Map<String, Long> left = new TreeMap<>(table.left());
      Map<String, Long> sold = new TreeMap<>(table.soldByLot());
      long missing = 0;
      long claimed = 0;
      for (Map.Entry<String, Long> lot : table.left().entrySet()) {
        long tooMany = -Math.min(0, lot.getValue());
        if (tooMany > 0) {
          long ofSales = Math.min(tooMany, table.soldByLot(lot.getKey()));
          found.add(new Contradiction(table.place(), lot.getKey(), tooMany));
          left.put(lot.getKey(), 0L);
          sold.merge(lot.getKey(), -ofSales, Long::sum);
          missing += tooMany;
          claimed += ofSales;
        }
      }
      upheld.add(new TableJars(table.place(), table.counted(), left, table.soldByLot()));
      withdrawn.add(new TableJars(table.place(), table.counted(), left, sold));
      notGone.add(new Unlotted(table.place(), "nowhere", missing, null));
      otherLots.add(new Unlotted(table.place(), "nowhere", missing - claimed, null));
      if (!table.counted()) {
        otherLots.add(new Unlotted(table.place(), Unlotted.SOLD, claimed, null));
      }
    }
    Optional<SoldByLot> either =
        or(solve(told.with(upheld, notGone)), solve(told.with(withdrawn, otherLots)));
    SoldByLot bounds = either.orElseGet(() -> widest(told));
    return new SoldByLot(bounds.sold(), bounds.standing(), List.copyOf(found), false);
  }

  private static Optional<SoldByLot> or(Optional<SoldByLot> one, Optional<SoldByLot> other) {
    if (one.isEmpty() || other.isEmpty()) {
      return one.or(() -> other);
    }
    return Optional.of(
        new SoldByLot(
            or(one.get().sold(), other.get().sold()),
            or(one.get().standing(), other.get().standing()),
            List.of(),
            false));
  }

  private static Map<String, Map<String, Bounds>> or(
      Map<String, Map<String, Bounds>> one, Map<String, Map<String, Bounds>> other) {
    Map<String, Map<String, Bounds>> both = new TreeMap<>();
    one.forEach(
        (place, lots) -> {
          Map<String, Bounds> merged = new TreeMap<>(lots);
          other
              .getOrDefault(place, Map.of())
              .forEach((lot, bounds) -> merged.merge(lot, bounds, Bounds::or));
          both.put(place, merged);
        });
    return both;
  }

  /** Nothing but that no lot sold more than all that may have been there. */
  private static SoldByLot widest(Telling told) {
    Map<String, Map<String, Bounds>> sold = new TreeMap<>();
    Map<String, Map<String, Bounds>> standing = new TreeMap<>();
    long carried = told.carried().stream().mapToLong(Unlotted::count).sum();
    for (TableJars table : told.tables()) {
      Map<String, Bounds> lots = new HashMap<>();
      Map<String, Bounds> there = new HashMap<>();
      for (String lot : told.lots()) {
        long most = Math.max(0, table.left(lot)) + carried;
        lots.put(lot, new Bounds(0, most + table.soldByLot(lot)));
        there.put(lot, new Bounds(0, table.counted() ? 0 : most));
      }
      sold.put(table.place(), lots);
      standing.put(table.place(), there);
    }
    return new SoldByLot(sold, standing, List.of(), false);
  }
}
