package org.barreltally.pricing;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/** Tax by place and date, as a bookkeeper sums it: lines as they were rounded, never anew. */
public final class TaxSums {

  private static final Comparator<Key> ORDER =
      Comparator.comparing(Key::on)
          .thenComparing(Key::place)
          .thenComparing(Key::productClass)
          .thenComparing(Key::percent, Comparator.nullsFirst(Comparator.naturalOrder()))
          .thenComparing(Key::currency);

  private TaxSums() {}

  /** A line with where and when it was sold. */
  public record Line(String place, LocalDate on, ProductClass productClass, Taxed taxed) {}

  /**
   * @param percent null where no rate was entered
   * @param lines how many
   */
  public record Sum(
      String place,
      LocalDate on,
      ProductClass productClass,
      BigDecimal percent,
      Money net,
      Money tax,
      int lines) {}

  private record Key(
      LocalDate on, String place, ProductClass productClass, BigDecimal percent, String currency) {}

  /** Sums by day, place, product class, percent and currency, in that order. */
  public static List<Sum> of(Collection<Line> lines) {
    TreeMap<Key, Sum> sums = new TreeMap<>(ORDER);
    for (Line line : lines) {
      Taxed taxed = line.taxed();
      Key key =
          new Key(
              line.on(),
              line.place(),
              line.productClass(),
              taxed.percent(),
              taxed.net().currency());
      Sum one =
          new Sum(
              line.place(),
              line.on(),
              line.productClass(),
              taxed.percent(),
              taxed.net(),
              taxed.tax(),
              1);
      sums.merge(key, one, TaxSums::plus);
    }
    return List.copyOf(sums.values());
  }

  private static Sum plus(Sum one, Sum other) {
    return new Sum(
        one.place(),
        one.on(),
        one.productClass(),
        one.percent(),
        one.net().plus(other.net()),
        one.tax().plus(other.tax()),
        one.lines() + other.lines());
  }
}
