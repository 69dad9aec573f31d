package org.barreltally.pricing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barreltally.measure.ColorClass;

/**
 * Jars of one size and grade in a basket, which all cost the same.
 *
 * @param grade null where it is not known
 * @param each in the currency's least coin
 * @param members its lines: their position among the lines of the size, and their jars
 */
record JarGroup(ColorClass grade, long each, List<Member> members) {

  /** A line by its position among the lines of the size. */
  record Member(int position, int count) {}

  int count() {
    return members.stream().mapToInt(Member::count).sum();
  }

  /** The jars of some lines, the dearest first. */
  static List<JarGroup> of(List<BasketLine> lines, List<Money> each, List<Integer> indexes) {
    Map<Optional<ColorClass>, JarGroup> groups = new LinkedHashMap<>();
    for (int position = 0; position < indexes.size(); position++) {
      int index = indexes.get(position);
      BasketLine line = lines.get(index);
      long coins = each.get(index).amount().unscaledValue().longValueExact();
      groups
          .computeIfAbsent(
              Optional.ofNullable(line.grade()),
              grade -> new JarGroup(grade.orElse(null), coins, new ArrayList<>()))
          .members()
          .add(new Member(position, line.count()));
    }
    return groups.values().stream()
        .sorted(Comparator.comparing(JarGroup::each).reversed())
        .toList();
  }
}
