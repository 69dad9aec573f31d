package org.barreltally.lots;

import java.util.List;
import java.util.Map;

/**
 * Where a lot came from and where it went, over every link.
 *
 * @param parents the lots it was made of directly
 * @param children the lots made of it directly
 * @param ancestors the share of each ancestor in this lot
 * @param descendants the share of this lot in each descendant
 * @param jars of this lot and its descendants, wherever they stand or went
 * @param bulk syrup of this lot and its descendants, wherever it stands or went
 * @param seasons crop years by lot, for the lot and its parents
 * @param brix true Brix by lot, for the lot and its parents
 */
public record Trace(
    Lot lot,
    List<Parent> parents,
    List<Parent> children,
    Map<String, Double> ancestors,
    Map<String, Double> descendants,
    List<Whereabouts.Jars> jars,
    List<Whereabouts.Bulk> bulk,
    Map<String, List<Integer>> seasons,
    Map<String, Double> brix) {

  /** Jars made of this lot and its descendants. */
  public long jarsMade() {
    return -jars.stream()
        .filter(j -> j.pieces() < 0 && !"unexplained".equals(j.place()))
        .mapToLong(Whereabouts.Jars::pieces)
        .sum();
  }

  /** Jars whose whereabouts the book knows. */
  public long jarsAccounted() {
    return jars.stream()
        .filter(j -> j.pieces() > 0 && !"unexplained".equals(j.place()))
        .mapToLong(Whereabouts.Jars::pieces)
        .sum();
  }
}
