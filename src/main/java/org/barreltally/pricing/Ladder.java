package org.barreltally.pricing;

import java.util.Arrays;
import java.util.List;

/**
 * The least that 0, 1, 2, … jars cost when each is taken singly or in one of some deals. A cost is
 * kept with how many deals it takes, so that of two ways that cost the same the one with fewer
 * deals is chosen.
 */
final class Ladder {

  /** More than the deals a basket can take: {@link Deals#MOST_JARS} / 2. */
  private static final long DEALS = 1 << 13;

  static final long IMPOSSIBLE = Long.MAX_VALUE / 4;

  private static final int SINGLY = -1;

  private final List<Deal> deals;
  private final long[] cost;
  private final int[] last;

  private Ladder(List<Deal> deals, int most) {
    this.deals = deals;
    cost = new long[most + 1];
    last = new int[most + 1];
    Arrays.fill(cost, IMPOSSIBLE);
    cost[0] = 0;
  }

  /**
   * @param each what one costs singly, in the least coin; null where only deals take jars
   */
  static Ladder of(int most, Long each, List<Deal> deals) {
    Ladder ladder = new Ladder(deals, most);
    for (int jars = 1; jars <= most; jars++) {
      if (each != null) {
        ladder.step(jars, 1, each * DEALS, SINGLY);
      }
      for (int deal = 0; deal < deals.size(); deal++) {
        long price = deals.get(deal).price().amount().unscaledValue().longValueExact();
        ladder.step(jars, deals.get(deal).count(), price * DEALS + 1, deal);
      }
    }
    return ladder;
  }

  private void step(int jars, int taken, long price, int how) {
    if (taken <= jars && cost[jars - taken] + price < cost[jars]) {
      cost[jars] = cost[jars - taken] + price;
      last[jars] = how;
    }
  }

  /** The cost of so many jars, to be compared and summed; {@link #IMPOSSIBLE} if no deals fit. */
  long cost(int jars) {
    return cost[jars];
  }

  /** What so many jars cost, in the least coin. */
  long coins(int jars) {
    return cost[jars] / DEALS;
  }

  /** How often each deal is used for so many jars, added to {@code times}. */
  void count(int jars, int[] times) {
    for (int left = jars; left > 0; ) {
      if (last[left] == SINGLY) {
        left--;
      } else {
        times[last[left]]++;
        left -= deals.get(last[left]).count();
      }
    }
  }
}
