package org.barreltally.stock;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.barreltally.stock.StockCount.Line;

/**
 * Sees mixed-up labels in a count: of one size, one lot is over by exactly what another is short
 * by. Where several lots are off by the same amount, nobody can say which belong together and none
 * is suspected.
 */
final class Swaps {

  private record Off(String container, long by) {}

  private Swaps() {}

  /** The same lines, each with the lot it was probably mixed up with. */
  static List<Line> suspect(List<Line> lines) {
    Map<Off, List<Line>> byDifference =
        lines.stream()
            .filter(line -> line.difference() != 0)
            .collect(Collectors.groupingBy(l -> new Off(l.container(), l.difference())));
    Map<Line, String> swapped = new HashMap<>();
    byDifference.forEach(
        (off, over) -> {
          List<Line> under = byDifference.get(new Off(off.container(), -off.by()));
          if (over.size() == 1 && under != null && under.size() == 1) {
            swapped.put(over.get(0), under.get(0).lot());
          }
        });
    return lines.stream()
        .map(line -> swapped.containsKey(line) ? line.swappedWith(swapped.get(line)) : line)
        .toList();
  }
}
