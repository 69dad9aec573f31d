package org.barreltally.cost.flow;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.barreltally.cost.flow.Happening.Moved;

/** What a movement did to one item: at own places, with the world outside, and in a making. */
final class OfItem {

  /**
   * Goods that go to an account or, below zero, come from it.
   *
   * @param place own place they go from or come to; null where it is not one
   */
  record Step(Goods goods, String account, String place, long amount) {}

  private final Goods goods;
  private final Map<String, Long> own = new LinkedHashMap<>();
  private final Map<String, Long> outside = new LinkedHashMap<>();
  private boolean made;

  OfItem(Goods goods) {
    this.goods = goods;
  }

  void add(Moved moved) {
    switch (moved.at()) {
      case OWN -> own.merge(moved.place(), moved.amount(), Long::sum);
      case OUTSIDE -> outside.merge(moved.place(), moved.amount(), Long::sum);
      case MAKING -> made = true;
    }
  }

  Goods goods() {
    return goods;
  }

  boolean isMade() {
    return made;
  }

  /** What came to own places, all together. */
  long own() {
    return own.values().stream().mapToLong(Long::longValue).sum();
  }

  /** The own place where it moved, if it is one. */
  String place() {
    return own.size() == 1 ? own.keySet().iterator().next() : null;
  }

  /**
   * @param byPlace whether each own place settles its own with the one account outside
   */
  List<Step> steps(boolean byPlace) {
    List<Step> steps = new ArrayList<>();
    if (byPlace && outside.size() == 1) {
      String account = outside.keySet().iterator().next();
      own.forEach((place, amount) -> steps.add(new Step(goods, account, place, -amount)));
    } else {
      outside.forEach(
          (account, amount) -> steps.add(new Step(goods, account, placeOf(amount), amount)));
    }
    return steps;
  }

  /** Where so many went from or came to: the one own place that lost, or gained, any. */
  private String placeOf(long amount) {
    List<String> places =
        own.entrySet().stream()
            .filter(each -> amount > 0 ? each.getValue() < 0 : each.getValue() > 0)
            .map(Map.Entry::getKey)
            .toList();
    return places.size() == 1 ? places.get(0) : null;
  }
}
