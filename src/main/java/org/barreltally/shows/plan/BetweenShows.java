package org.barreltally.shows.plan;

import java.util.Collection;
import java.util.List;

/**
 * How much of the spread of demand lies between shows and how much from one time to the next at the
 * same show. Every record of a show visited again is foretold from those before it; the share that
 * foretells best is the likeliest. Half is taken unless the records speak against it: of all shares
 * within the 95 % likelihood interval (½ χ² with one degree of freedom, 1.92) the one nearest to a
 * half.
 */
final class BetweenShows {

  private static final double USUAL = 0.5;
  private static final double[] SHARES = {0, 0.1, 0.25, USUAL, 0.75, 0.9, 1};
  private static final double HALF_CHI_SQUARE_95 = 1.9207;

  /** An item's fit over all shows, and its counts at those visited again. */
  record Revisited(Fit fit, List<List<CensoredCount>> shows) {}

  private BetweenShows() {}

  /** The share, 0 to 1. */
  static double share(Collection<Revisited> items) {
    double[] foretold = new double[SHARES.length];
    double best = Double.NEGATIVE_INFINITY;
    for (int n = 0; n < SHARES.length; n++) {
      for (Revisited item : items) {
        foretold[n] += foretold(item, SHARES[n]);
      }
      best = Math.max(best, foretold[n]);
    }
    double nearest = USUAL;
    double distance = Double.POSITIVE_INFINITY;
    for (int n = 0; n < SHARES.length; n++) {
      double away = Math.abs(SHARES[n] - USUAL);
      if (foretold[n] >= best - HALF_CHI_SQUARE_95 && away < distance) {
        nearest = SHARES[n];
        distance = away;
      }
    }
    return nearest;
  }

  private static double foretold(Revisited item, double share) {
    Spread spread = Spread.of(item.fit().shape(), share);
    double sum = 0;
    for (List<CensoredCount> times : item.shows()) {
      ShowRate rate = ShowRate.of(item.fit().mean(), spread, 0);
      for (int n = 0; n < times.size(); n++) {
        CensoredCount count = times.get(n);
        if (n > 0) {
          NegativeBinomial demand = rate.demand(count.exposure());
          sum +=
              count.soldOut()
                  ? Math.log(Math.max(Double.MIN_NORMAL, demand.atLeast(count.pieces())))
                  : demand.logProbability(count.pieces());
        }
        rate = rate.after(count);
      }
    }
    return sum;
  }
}
