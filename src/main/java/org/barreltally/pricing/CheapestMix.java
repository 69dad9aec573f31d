package org.barreltally.pricing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The cheapest way to buy jars of one size: how many of each group go into deals for any grade (the
 * mixed jars), while the rest of it is taken singly and in the deals of its grade.
 *
 * <p>Found exactly by dynamic programming over the groups and the number of mixed jars (the
 * knapsack recurrence); time grows with the square of the jars.
 */
final class CheapestMix {

  private final List<JarGroup> groups;
  private final List<Ladder> apart = new ArrayList<>();
  private final List<Deal> mixing;
  private final Ladder mixed;
  private final int[] taken;

  private CheapestMix(List<JarGroup> groups, List<Deal> deals) {
    this.groups = groups;
    mixing = deals.stream().filter(deal -> deal.grade() == null).toList();
    for (JarGroup group : groups) {
      apart.add(Ladder.of(group.count(), group.each(), group.own()));
    }
    int jars = mixing.isEmpty() ? 0 : groups.stream().mapToInt(JarGroup::count).sum();
    mixed = Ladder.of(jars, null, mixing);
    taken = choose(jars);
  }

  /** Groups from the dearest to the cheapest. */
  static CheapestMix of(List<JarGroup> groups, List<Deal> deals) {
    return new CheapestMix(groups, deals);
  }

  /** How many jars of a group are mixed. */
  int mixedOf(int group) {
    return taken[group];
  }

  /** What the jars of a group that are not mixed cost, in the least coin. */
  long apartOf(int group) {
    return apart.get(group).coins(groups.get(group).count() - taken[group]);
  }

  /** What the mixed jars cost together, in the least coin. */
  long mixedCoins() {
    return mixed.coins(Arrays.stream(taken).sum());
  }

  List<Charged.Used> used() {
    List<Charged.Used> used = new ArrayList<>();
    for (int i = 0; i < groups.size(); i++) {
      addUsed(apart.get(i), groups.get(i).count() - taken[i], groups.get(i).own(), used);
    }
    addUsed(mixed, Arrays.stream(taken).sum(), mixing, used);
    return used;
  }

  private static void addUsed(Ladder ladder, int jars, List<Deal> deals, List<Charged.Used> used) {
    int[] times = new int[deals.size()];
    ladder.count(jars, times);
    for (int i = 0; i < times.length; i++) {
      if (times[i] > 0) {
        used.add(new Charged.Used(deals.get(i), times[i]));
      }
    }
  }

  /** Least cost of the first groups by how many of their jars are mixed; then the way back. */
  private int[] choose(int most) {
    long[] least = new long[most + 1];
    Arrays.fill(least, Ladder.IMPOSSIBLE);
    least[0] = 0;
    int[][] choices = new int[groups.size()][];
    for (int i = 0; i < groups.size(); i++) {
      choices[i] = new int[most + 1];
      least = with(least, i, choices[i]);
    }
    int best = 0;
    for (int jars = 1; jars <= most; jars++) {
      if (least[jars] + mixed.cost(jars) < least[best] + mixed.cost(best)) {
        best = jars;
      }
    }
    int[] way = new int[groups.size()];
    for (int i = groups.size() - 1; i >= 0; i--) {
      way[i] = choices[i][best];
      best -= way[i];
    }
    return way;
  }

  private long[] with(long[] before, int group, int[] choice) {
    Ladder ladder = apart.get(group);
    int count = groups.get(group).count();
    long[] after = new long[before.length];
    Arrays.fill(after, Ladder.IMPOSSIBLE);
    for (int had = 0; had < before.length && before[had] < Ladder.IMPOSSIBLE; had++) {
      for (int more = 0; more <= count && had + more < before.length; more++) {
        long cost = before[had] + ladder.cost(count - more);
        int jars = had + more;
        // of equals the fewest of this cheaper grade, so that the dearer ones are mixed
        if (cost < after[jars] || cost == after[jars] && more < choice[jars]) {
          after[jars] = cost;
          choice[jars] = more;
        }
      }
    }
    return after;
  }
}
