package org.barreltally.supplies;

import java.util.List;
import org.barreltally.canning.UsesSupplies.Jars;

/**
 * What one run needs of one supply. A carton takes jars of the sizes it fits together.
 *
 * @param fills jars by the run's fills, zero where that size does not use it
 */
record RunNeed(Supply supply, List<Long> fills) {

  static RunNeed of(Supply supply, List<Jars> jars) {
    return new RunNeed(
        supply,
        jars.stream().map(j -> supply.usedBy(j.container()) ? (long) j.pieces() : 0L).toList());
  }

  /** Pieces of the supply for the whole run. */
  long pieces() {
    return supply.needed(fills.stream().mapToLong(Long::longValue).sum());
  }

  boolean shortOf(long onHand) {
    return pieces() > onHand;
  }

  /** The path of the fill with which it runs out. */
  String shortField(long onHand) {
    long jars = 0;
    for (int i = 0; i < fills.size(); i++) {
      jars += fills.get(i);
      if (fills.get(i) > 0 && supply.needed(jars) > onHand) {
        return "fills[" + i + "]";
      }
    }
    throw new IllegalArgumentException("it does not run out");
  }

  String notCounted() {
    return "%s (%s): not counted yet; the run uses %d. Count them, so that they do not run out unseen."
        .formatted(supply.name(), supply.code(), pieces());
  }
}
