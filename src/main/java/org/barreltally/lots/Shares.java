package org.barreltally.lots;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How much of one lot is in another, over all paths. Lots are visited in topological order, once
 * each; walking every path would take exponential time through years of heels.
 */
final class Shares {

  private Shares() {}

  /**
   * The share of each ancestor in {@code lot}, nearest first.
   *
   * @param above every link above the lot, and no other
   */
  static Map<String, Double> ofAncestors(String lot, List<Parent> above) {
    return spread(
        lot, above.stream().map(p -> new Link(p.child(), p.parent(), p.share())).toList());
  }

  /**
   * The share of {@code lot} in each descendant, nearest first.
   *
   * @param below every link below the lot, and no other
   */
  static Map<String, Double> inDescendants(String lot, List<Parent> below) {
    return spread(
        lot, below.stream().map(p -> new Link(p.parent(), p.child(), p.share())).toList());
  }

  private record Link(String from, String to, double share) {}

  private static Map<String, Double> spread(String start, List<Link> links) {
    Map<String, List<Link>> leaving = new HashMap<>();
    Map<String, Integer> waitingFor = new HashMap<>();
    for (Link link : links) {
      leaving.computeIfAbsent(link.from(), k -> new ArrayList<>()).add(link);
      waitingFor.merge(link.to(), 1, Integer::sum);
    }
    Map<String, Double> shares = new LinkedHashMap<>();
    shares.put(start, 1.0);
    Deque<String> ready = new ArrayDeque<>(List.of(start));
    while (!ready.isEmpty()) {
      String lot = ready.poll();
      for (Link link : leaving.getOrDefault(lot, List.of())) {
        shares.merge(link.to(), shares.get(lot) * link.share(), Double::sum);
        if (waitingFor.merge(link.to(), -1, Integer::sum) == 0) {
          ready.add(link.to());
        }
      }
    }
    shares.remove(start);
    return shares;
  }
}
