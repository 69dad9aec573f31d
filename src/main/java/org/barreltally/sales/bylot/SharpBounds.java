package org.barreltally.sales.bylot;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The narrowest bounds, by trying everything in an order that stays small: for each lot all ways in
 * which its pieces can be in the carryings, then which sums over the other lots are possible. A sum
 * is a number with one digit for each carrying, a set of sums a number with a bit for each, so that
 * adding a lot's way to all sums at once is one shift.
 */
final class SharpBounds {

  /** The most sums, and ways of one lot, that are tried. */
  static final long MOST = 10_000;

  private record Way(long[] of, int code) {}

  private final Telling telling;
  private final int[] radix;
  private final long[] counts;
  private final BigInteger allowed;
  private final Map<String, List<Way>> ways = new TreeMap<>();

  private SharpBounds(Telling telling) {
    this.telling = telling;
    this.counts = telling.carried().stream().mapToLong(Unlotted::count).toArray();
    this.radix = new int[counts.length];
    int unit = 1;
    for (int c = 0; c < counts.length; c++) {
      radix[c] = unit;
      unit *= (int) (2 * counts[c] + 1); // two sums within the counts never carry over
    }
    BigInteger[] bits = {BigInteger.ZERO};
    each(counts, new long[counts.length], 0, of -> bits[0] = bits[0].setBit(code(of)));
    this.allowed = bits[0];
    for (String lot : telling.lots()) {
      ways.put(lot, waysOf(lot));
    }
  }

  static boolean canTry(Telling telling) {
    double sums = 1;
    for (Unlotted carried : telling.carried()) {
      sums *= carried.count() + 1.0;
    }
    return sums <= MOST && telling.carried().size() <= 12;
  }

  /** Empty if nothing fits what was told. */
  static Optional<SoldByLot> of(Telling telling) {
    return new SharpBounds(telling).bounds();
  }

  private Optional<SoldByLot> bounds() {
    Map<String, Map<String, Bounds>> sold = new TreeMap<>();
    Map<String, Map<String, Bounds>> standing = new TreeMap<>();
    int whole = code(counts);
    for (String lot : telling.lots()) {
      BigInteger others = sumsWithout(lot);
      boolean fits = false;
      for (Way way : ways.get(lot)) {
        if (others.testBit(whole - way.code())) {
          fits = true;
          widen(lot, way.of(), sold, standing);
        }
      }
      if (!fits) {
        return Optional.empty();
      }
    }
    boolean impossible = telling.lots().isEmpty() && whole > 0;
    return impossible
        ? Optional.empty()
        : Optional.of(new SoldByLot(sold, standing, List.of(), true));
  }

  private void widen(
      String lot,
      long[] of,
      Map<String, Map<String, Bounds>> sold,
      Map<String, Map<String, Bounds>> standing) {
    for (TableJars table : telling.tables()) {
      merge(sold, table.place(), lot, telling.sold(table, lot, of));
      merge(standing, table.place(), lot, telling.standing(table, lot, of));
    }
  }

  private static void merge(
      Map<String, Map<String, Bounds>> all, String place, String lot, long pieces) {
    all.computeIfAbsent(place, p -> new TreeMap<>()).merge(lot, Bounds.exactly(pieces), Bounds::or);
  }

  private BigInteger sumsWithout(String lot) {
    BigInteger sums = BigInteger.ONE;
    for (Map.Entry<String, List<Way>> other : ways.entrySet()) {
      if (!other.getKey().equals(lot)) {
        BigInteger next = BigInteger.ZERO;
        for (Way way : other.getValue()) {
          next = next.or(sums.shiftLeft(way.code()));
        }
        sums = next.and(allowed);
      }
    }
    return sums;
  }

  private List<Way> waysOf(String lot) {
    long[] most = counts.clone();
    for (int c = 0; c < most.length; c++) {
      if (!telling.carried().get(c).canBe(lot)) {
        most[c] = 0;
      }
    }
    List<Way> found = new ArrayList<>();
    each(
        most,
        new long[most.length],
        0,
        of -> {
          if (telling.fits(lot, of)) {
            found.add(new Way(of.clone(), code(of)));
          }
        });
    return found;
  }

  private interface Tried {
    void way(long[] of);
  }

  private static void each(long[] most, long[] of, int at, Tried tried) {
    if (at == most.length) {
      tried.way(of);
      return;
    }
    for (of[at] = 0; of[at] <= most[at]; of[at]++) {
      each(most, of, at + 1, tried);
    }
    of[at] = 0;
  }

  private int code(long[] of) {
    int code = 0;
    for (int c = 0; c < of.length; c++) {
      code += (int) of[c] * radix[c];
    }
    return code;
  }
}
