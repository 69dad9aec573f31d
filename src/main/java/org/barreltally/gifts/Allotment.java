package org.barreltally.gifts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Who gets which jars. As many pieces as can be are met, and of all ways to do so one with the
 * fewest and earliest substitutes is taken: a flow of least cost between what is wanted (grouped by
 * its choices) and what there is, found by shortest augmenting paths. Among recipients who want the
 * same, those with lower numbers get the first choice.
 *
 * @param met what each recipient gets, in the order of the needs
 * @param unmet what is left over of the needs
 */
record Allotment(List<Allotted> met, List<Need> unmet) {

  /** So much of one group of needs comes from each jar. */
  private static final class Group {
    final List<Jar> choices;
    final Map<Jar, Long> given = new HashMap<>();
    long open;

    Group(List<Jar> choices) {
      this.choices = choices;
    }

    long given(Jar jar) {
      return given.getOrDefault(jar, 0L);
    }
  }

  /** How a jar was reached in the search: by which group, and from which jar that group moves. */
  private record Step(Group group, Jar from, int cost) {}

  /**
   * @param available pieces of each jar; below zero counts as none
   */
  static Allotment of(List<Need> needs, Map<Jar, Long> available) {
    Map<List<Jar>, Group> groups = new LinkedHashMap<>();
    needs.forEach(need -> groups.computeIfAbsent(need.choices(), Group::new).open += need.pieces());
    Map<Jar, Long> left = new HashMap<>(available);
    while (improved(List.copyOf(groups.values()), left)) {
      // each turn empties a jar or meets a group, or moves a group out of another's way
    }
    return shared(needs, groups);
  }

  /**
   * Brings pieces along the cheapest path to a group that is not met yet; false if there is none.
   */
  private static boolean improved(List<Group> groups, Map<Jar, Long> left) {
    Map<Jar, Step> reached = search(groups);
    Jar best = null;
    for (Map.Entry<Jar, Step> entry : reached.entrySet()) {
      boolean some = left.getOrDefault(entry.getKey(), 0L) > 0;
      if (some && (best == null || entry.getValue().cost() < reached.get(best).cost())) {
        best = entry.getKey();
      }
    }
    if (best == null) {
      return false;
    }
    long pieces = left.get(best);
    for (Jar jar = best; jar != null; jar = reached.get(jar).from()) {
      Step step = reached.get(jar);
      pieces =
          Math.min(
              pieces, step.from() == null ? step.group().open : step.group().given(step.from()));
    }
    left.merge(best, -pieces, Long::sum);
    for (Jar jar = best; jar != null; jar = reached.get(jar).from()) {
      Step step = reached.get(jar);
      step.group().given.merge(jar, pieces, Long::sum);
      if (step.from() == null) {
        step.group().open -= pieces;
      } else {
        step.group().given.merge(step.from(), -pieces, Long::sum);
      }
    }
    return true;
  }

  /** The cheapest way to every jar from groups that are not met (Bellman and Ford's method). */
  private static Map<Jar, Step> search(List<Group> groups) {
    Map<Jar, Step> reached = new LinkedHashMap<>();
    for (boolean changed = true; changed; ) {
      changed = false;
      for (Group group : groups) {
        for (int rank = 0; rank < group.choices.size(); rank++) {
          Step step = cheapest(group, rank, reached);
          Jar jar = group.choices.get(rank);
          if (step != null
              && (!reached.containsKey(jar) || step.cost() < reached.get(jar).cost())) {
            reached.put(jar, step);
            changed = true;
          }
        }
      }
    }
    return reached;
  }

  private static Step cheapest(Group group, int rank, Map<Jar, Step> reached) {
    Step best = group.open > 0 ? new Step(group, null, rank) : null;
    for (int other = 0; other < group.choices.size(); other++) {
      Jar from = group.choices.get(other);
      if (other != rank && group.given(from) > 0 && reached.containsKey(from)) {
        int cost = reached.get(from).cost() + rank - other;
        if (best == null || cost < best.cost()) {
          best = new Step(group, from, cost);
        }
      }
    }
    return best;
  }

  /** Hands what each group got to its recipients, first choices first. */
  private static Allotment shared(List<Need> needs, Map<List<Jar>, Group> groups) {
    List<Allotted> met = new ArrayList<>();
    List<Need> unmet = new ArrayList<>();
    for (Need need : needs) {
      Group group = groups.get(need.choices());
      long open = need.pieces();
      for (Jar jar : need.choices()) {
        long pieces = Math.min(open, group.given(jar));
        if (pieces > 0) {
          met.add(new Allotted(need.n(), need.wanted(), jar, pieces));
          group.given.merge(jar, -pieces, Long::sum);
          open -= pieces;
        }
      }
      if (open > 0) {
        unmet.add(new Need(need.n(), need.choices(), open));
      }
    }
    return new Allotment(met, unmet);
  }
}
