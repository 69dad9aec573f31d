package org.barreltally.shows.plan;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Predicate;

/**
 * Shares out the load of the vehicle and the shelves of the table among kinds of jars so that the
 * expected gain is greatest. Gains fall with every piece, so taking pieces by gain per unit of what
 * is scarce is right up to the last piece (Fox, Management Science 13 (1966) 210; Everett,
 * Operations Research 11 (1963) 399; both from memory). The prices of the two scarce things are
 * found by bisection; what they leave over is filled up, and pieces are exchanged as long as that
 * gains.
 */
final class Sharing {

  private static final int HALVINGS = 40;
  private static final double ROUNDING = 1e-9;

  private final List<Candidate> candidates;
  private final double[][] gains;
  private final double kgMost;
  private final double inchesMost;

  private Sharing(List<Candidate> candidates, double kgMost, double inchesMost) {
    this.candidates = candidates;
    this.gains = candidates.stream().map(Candidate::gains).toArray(double[][]::new);
    this.kgMost = kgMost;
    this.inchesMost = inchesMost;
  }

  /**
   * @param kgMost the load; infinite where nobody said
   * @param inchesMost the length of shelf
   */
  static Allotment of(List<Candidate> candidates, double kgMost, double inchesMost) {
    Sharing sharing = new Sharing(candidates, kgMost, inchesMost);
    Prices prices = sharing.prices();
    int[] pieces = sharing.best(prices);
    double bound =
        sharing.gain(pieces)
            - prices.of(sharing.kg(pieces), sharing.inches(pieces))
            + sharing.worth(prices);
    do {
      sharing.fillUp(pieces, prices);
    } while (sharing.exchange(pieces));
    return new Allotment(
        Arrays.stream(pieces).boxed().toList(), prices, sharing.gain(pieces), bound);
  }

  /** The lowest prices at which neither limit is passed. */
  private Prices prices() {
    if (Double.isInfinite(kgMost)) {
      return shelfPrice(0);
    }
    return lowest(this::shelfPrice, prices -> kg(best(prices)) <= kgMost + ROUNDING);
  }

  private Prices shelfPrice(double kgPrice) {
    return lowest(
        inchPrice -> new Prices(kgPrice, inchPrice),
        prices -> inches(best(prices)) <= inchesMost + ROUNDING);
  }

  private Prices lowest(DoubleFunction<Prices> at, Predicate<Prices> withinLimit) {
    Prices free = at.apply(0);
    if (withinLimit.test(free)) {
      return free;
    }
    double low = 0;
    double high = 1;
    while (!withinLimit.test(at.apply(high))) {
      low = high;
      high *= 4;
    }
    for (int n = 0; n < HALVINGS; n++) {
      double middle = (low + high) / 2;
      if (withinLimit.test(at.apply(middle))) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return at.apply(high);
  }

  /** What is worth taking at these prices. */
  private int[] best(Prices prices) {
    int[] pieces = new int[gains.length];
    for (int i = 0; i < pieces.length; i++) {
      pieces[i] = best(i, prices);
    }
    return pieces;
  }

  private int best(int i, Prices prices) {
    Candidate candidate = candidates.get(i);
    double facing = prices.of(0, candidate.facing());
    double kg = prices.of(candidate.kg(), 0);
    int best = 0;
    double most = 0;
    for (int n = 1; n < gains[i].length; n++) {
      double left = gains[i][n] - kg * n - facing * candidate.facings(n);
      if (left > most) {
        most = left;
        best = n;
      }
    }
    return best;
  }

  /** Adds pieces, or whole facings of them, while any fit: those that gain most for their price. */
  private void fillUp(int[] pieces, Prices prices) {
    while (true) {
      int chosen = -1;
      int step = 0;
      double most = 0;
      for (int i = 0; i < pieces.length; i++) {
        for (int n = pieces[i] + 1; n < gains[i].length && fits(pieces, i, n); n++) {
          double gain = gains[i][n] - gains[i][pieces[i]];
          double used =
              prices.of(
                  candidates.get(i).kg() * (n - pieces[i]),
                  candidates.get(i).facing()
                      * (candidates.get(i).facings(n) - candidates.get(i).facings(pieces[i])));
          double ratio = gain / (used + ROUNDING);
          if (gain > 0 && ratio > most) {
            most = ratio;
            chosen = i;
            step = n;
          }
        }
      }
      if (chosen < 0) {
        return;
      }
      pieces[chosen] = step;
    }
  }

  /** Gives up a piece or a facing of one kind where others bring more; false where none do. */
  private boolean exchange(int[] pieces) {
    for (int i = 0; i < pieces.length; i++) {
      int inFacing = candidates.get(i).inFacing();
      int last = (pieces[i] - 1) % Math.max(1, inFacing) + 1;
      for (int fewer : new int[] {1, 2, 3, inFacing, last, pieces[i]}) {
        if (fewer < 1 || fewer > pieces[i]) {
          continue;
        }
        int[] tried = pieces.clone();
        tried[i] -= fewer;
        for (int j = 0; j < pieces.length; j++) {
          int most = tried[j];
          while (j != i && most + 1 < gains[j].length && fits(tried, j, most + 1)) {
            most++;
          }
          int before = tried[j];
          tried[j] = most;
          if (gain(tried) > gain(pieces) + ROUNDING) {
            System.arraycopy(tried, 0, pieces, 0, pieces.length);
            return true;
          }
          tried[j] = before;
        }
      }
    }
    return false;
  }

  private boolean fits(int[] pieces, int i, int n) {
    int before = pieces[i];
    pieces[i] = n;
    boolean fits = kg(pieces) <= kgMost + ROUNDING && inches(pieces) <= inchesMost + ROUNDING;
    pieces[i] = before;
    return fits;
  }

  private double worth(Prices prices) {
    return (prices.kg() == 0 ? 0 : prices.kg() * kgMost)
        + (prices.inch() == 0 ? 0 : prices.inch() * inchesMost);
  }

  private double gain(int[] pieces) {
    double sum = 0;
    for (int i = 0; i < pieces.length; i++) {
      sum += gains[i][pieces[i]];
    }
    return sum;
  }

  private double kg(int[] pieces) {
    double sum = 0;
    for (int i = 0; i < pieces.length; i++) {
      sum += pieces[i] * candidates.get(i).kg();
    }
    return sum;
  }

  private double inches(int[] pieces) {
    double sum = 0;
    for (int i = 0; i < pieces.length; i++) {
      sum += candidates.get(i).facings(pieces[i]) * candidates.get(i).facing();
    }
    return sum;
  }
}
