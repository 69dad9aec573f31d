package org.barreltally.lots;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

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
 * @param doubts jars of which it is open whether they are of these lots
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
    Map<String, Double> brix,
    List<JarsInDoubt.Doubt> doubts) {

  /** Jars made of this lot and its descendants: what packing and opening stock gave. */
  public long jarsMade() {
    return -jars.stream()
        .filter(Whereabouts.Jars::isSource)
        .mapToLong(Whereabouts.Jars::pieces)
        .sum();
  }

  /**
   * Jars whose whereabouts the book knows. It differs from {@link #jarsMade} by what counts found
   * missing, or else by what they found over: jars of one size over do not make up for jars of
   * another missing.
   */
  public long jarsAccounted() {
    Map<String, Long> gone =
        jars.stream()
            .filter(Whereabouts.Jars::isUnexplained)
            .collect(
                Collectors.groupingBy(
                    Whereabouts.Jars::container, Collectors.summingLong(Whereabouts.Jars::pieces)));
    long missing = gone.values().stream().filter(n -> n > 0).mapToLong(Long::longValue).sum();
    long over = -gone.values().stream().filter(n -> n < 0).mapToLong(Long::longValue).sum();
    return missing > 0 ? jarsMade() - missing : jarsMade() + over;
  }
}
