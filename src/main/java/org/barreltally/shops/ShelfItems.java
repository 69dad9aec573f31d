package org.barreltally.shops;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.barreltally.shops.internal.OtherEntries;

/** Adds up what came, went and was counted on a shelf, by size, grade and lot. */
final class ShelfItems {

  private record Key(String container, String lot) implements Comparable<Key> {
    @Override
    public int compareTo(Key other) {
      int bySize = container.compareTo(other.container);
      return bySize != 0 ? bySize : lot.compareTo(other.lot);
    }
  }

  /** Pieces of one size and lot; the grade as it was told last. */
  private static final class Sums {
    private String grade;
    private long opening;
    private long delivered;
    private long fetched;
    private long sold;
    private long broken;
    private long missing;
    private long otherwise;
  }

  private final Map<Key, Sums> sums = new TreeMap<>();
  private final LocalDate from;

  private ShelfItems(LocalDate from) {
    this.from = from;
  }

  /**
   * What happened before the first day makes the opening; lines with nothing in them are left out.
   */
  static List<Statement.Item> between(
      List<Delivery> deliveries,
      List<ShelfCount> counts,
      List<OtherEntries.Other> others,
      LocalDate from) {
    ShelfItems items = new ShelfItems(from);
    deliveries.forEach(items::add);
    counts.forEach(items::add);
    others.forEach(items::add);
    return items.sums.entrySet().stream()
        .map(e -> item(e.getKey(), e.getValue()))
        .filter(
            i ->
                i.opening() + i.delivered() + i.closing() != 0
                    || i.sold() + i.missing() != 0
                    || i.otherwise() != 0)
        .toList();
  }

  private void add(Delivery delivery) {
    boolean out = delivery.direction() == Delivery.Direction.DELIVERED;
    for (Delivery.Line line : delivery.lines()) {
      Sums sum = of(line.container(), line.lot(), line.grade());
      if (delivery.on().isBefore(from)) {
        sum.opening += out ? line.count() : -line.count();
      } else if (out) {
        sum.delivered += line.count();
      } else {
        sum.fetched += line.count();
      }
    }
  }

  private void add(ShelfCount count) {
    for (ShelfCount.Line line : count.lines()) {
      Sums sum = of(line.container(), line.lot(), line.grade());
      if (count.on().isBefore(from)) {
        sum.opening -= line.sold() + line.broken() + line.missing();
      } else {
        sum.sold += line.sold();
        sum.broken += line.broken();
        sum.missing += line.missing();
      }
    }
  }

  private void add(OtherEntries.Other other) {
    Sums sum = of(other.container(), other.lot(), other.grade());
    if (other.on().isBefore(from)) {
      sum.opening += other.amount();
    } else {
      sum.otherwise += other.amount();
    }
  }

  private Sums of(String container, String lot, String grade) {
    Sums sum = sums.computeIfAbsent(new Key(container, lot), key -> new Sums());
    sum.grade = grade;
    return sum;
  }

  private static Statement.Item item(Key key, Sums s) {
    return new Statement.Item(
        key.container(),
        s.grade,
        key.lot(),
        s.opening,
        s.delivered,
        s.fetched,
        s.sold,
        s.broken,
        s.missing,
        s.otherwise,
        s.opening + s.delivered - s.fetched - s.sold - s.broken - s.missing + s.otherwise);
  }
}
