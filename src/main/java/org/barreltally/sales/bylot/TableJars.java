package org.barreltally.sales.bylot;

import java.util.Map;
import java.util.TreeMap;

/**
 * What the book knows by lot of the jars of one size at one table.
 *
 * @param counted whether what was not sold was counted back by lot: then all that is left of a lot
 *     was sold. Otherwise it may still stand there.
 * @param left by lot: what went out to the table and came from other tables, less what went to
 *     other tables, came home, broke, was sampled, or was sold under its lot. Below zero where more
 *     of a lot went than was told to have come.
 * @param soldByLot pieces of sales that named their lot, 0 or more
 */
public record TableJars(
    String place, boolean counted, Map<String, Long> left, Map<String, Long> soldByLot) {

  public TableJars {
    left = new TreeMap<>(left);
    soldByLot = new TreeMap<>(soldByLot);
  }

  long left(String lot) {
    return left.getOrDefault(lot, 0L);
  }

  long soldByLot(String lot) {
    return soldByLot.getOrDefault(lot, 0L);
  }
}
