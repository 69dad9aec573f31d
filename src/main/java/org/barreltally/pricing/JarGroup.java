package org.barreltally.pricing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Jars of one size in a basket that cost the same and can take part in the same deals, so that none
 * of them has a reason to bear more than another.
 *
 * @param own the deals for their grade alone
 * @param each in the currency's least coin
 * @param members its lines: their position among the lines of the size, and their jars
 */
record JarGroup(List<Deal> own, long each, List<Member> members) {

  /** A line by its position among the lines of the size. */
  record Member(int position, int count) {}

  private record Alike(List<Deal> own, long each) {}

  int count() {
    return members.stream().mapToInt(Member::count).sum();
  }

  /** The jars of some lines, the dearest first. */
  static List<JarGroup> of(
      List<BasketLine> lines, List<Money> each, List<Integer> indexes, List<Deal> deals) {
    Map<Alike, JarGroup> groups = new LinkedHashMap<>();
    for (int position = 0; position < indexes.size(); position++) {
      int index = indexes.get(position);
      BasketLine line = lines.get(index);
      List<Deal> own =
          deals.stream()
              .filter(deal -> deal.grade() != null && deal.grade() == line.grade())
              .toList();
      long coins = each.get(index).amount().unscaledValue().longValueExact();
      groups
          .computeIfAbsent(
              new Alike(own, coins), alike -> new JarGroup(own, coins, new ArrayList<>()))
          .members()
          .add(new Member(position, line.count()));
    }
    return groups.values().stream()
        .sorted(Comparator.comparing(JarGroup::each).reversed())
        .toList();
  }
}
