package org.barreltally.gifts;

import java.util.ArrayList;
import java.util.List;

/** What recipients need, by the recipes of their boxes. */
final class Needs {

  private Needs() {}

  /** Everything in the boxes of a recipient. */
  static List<Need> of(int n, GiftBox box, int boxes) {
    return box.contents().stream()
        .map(content -> new Need(n, content.choices(), (long) content.count() * boxes))
        .toList();
  }

  /** What a recipient still lacks, beside the jars picked already. */
  static List<Need> missing(GiftOrder order, GiftLine line) {
    List<Need> missing = new ArrayList<>();
    for (Need need : of(line.n(), order.box(line), line.count())) {
      long there =
          order.jars(line.n(), Stage.SHELF).stream()
              .filter(jars -> jars.wanted().equals(need.wanted()))
              .mapToLong(GiftJars::pieces)
              .sum();
      if (there < need.pieces()) {
        missing.add(new Need(need.n(), need.choices(), need.pieces() - there));
      }
    }
    return missing;
  }
}
