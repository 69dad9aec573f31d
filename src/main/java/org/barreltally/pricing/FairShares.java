package org.barreltally.pricing;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Shares what a size costs among its lines. Mixed jars bear their deals in proportion to what they
 * cost singly; jars of one group bear the same. Exact fractions are cut to whole coins, and what is
 * left over goes one coin each to the lines cut most (the method of the largest remainder).
 */
final class FairShares {

  /** An exact share of a line: numerator over denominator coins. */
  private record Share(int position, BigInteger numerator, BigInteger denominator, long each) {

    long whole() {
      return numerator.divide(denominator).longValueExact();
    }

    /** Compares what was cut off. */
    int compareCut(Share other) {
      BigInteger here = numerator.mod(denominator).multiply(other.denominator);
      BigInteger there = other.numerator.mod(other.denominator).multiply(denominator);
      return here.compareTo(there);
    }
  }

  private static final Comparator<Share> LEAST_CUT_FIRST = Share::compareCut;

  private static final Comparator<Share> MOST_CUT_FIRST =
      LEAST_CUT_FIRST.thenComparingLong(Share::each).reversed().thenComparingInt(Share::position);

  private FairShares() {}

  /**
   * @param lines how many lines the groups have together
   * @return the coins of each line by its position
   */
  static long[] of(List<JarGroup> groups, CheapestMix mix, int lines) {
    long singly = 0;
    for (int i = 0; i < groups.size(); i++) {
      singly += mix.mixedOf(i) * groups.get(i).each();
    }
    List<Share> shares = new ArrayList<>();
    long total = mix.mixedCoins();
    for (int i = 0; i < groups.size(); i++) {
      JarGroup group = groups.get(i);
      total += mix.apartOf(i);
      BigInteger ofGroup =
          times(mix.apartOf(i), Math.max(singly, 1))
              .add(
                  times(mix.mixedCoins(), mix.mixedOf(i))
                      .multiply(BigInteger.valueOf(group.each())));
      BigInteger denominator = times(group.count(), Math.max(singly, 1));
      for (JarGroup.Member member : group.members()) {
        BigInteger numerator = ofGroup.multiply(BigInteger.valueOf(member.count()));
        shares.add(new Share(member.position(), numerator, denominator, group.each()));
      }
    }
    return whole(shares, total, lines);
  }

  private static long[] whole(List<Share> shares, long total, int lines) {
    long[] coins = new long[lines];
    long left = total;
    for (Share share : shares) {
      coins[share.position()] = share.whole();
      left -= share.whole();
    }
    shares.sort(MOST_CUT_FIRST);
    for (int i = 0; i < left; i++) {
      coins[shares.get(i).position()]++;
    }
    return coins;
  }

  private static BigInteger times(long one, long other) {
    return BigInteger.valueOf(one).multiply(BigInteger.valueOf(other));
  }
}
