package org.barreltally.cost.flow;

import static org.barreltally.cost.flow.PoolTest.back;
import static org.barreltally.cost.flow.PoolTest.out;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Pools beside models too simple to be wrong, over random comings and goings. */
class PoolModelTest {

  private static final int PLAYS = 60;
  private static final int STEPS = 120;

  /** First in first out: every single unit stands in a queue with what it cost, in cents. */
  @Test
  void first_in_first_out_is_a_queue_of_single_units() {
    long seed = seed();
    for (int play = 0; play < PLAYS; play++) {
      Random random = new Random(seed + play);
      Pool pool = Pool.firstInFirstOut(2);
      Deque<Long> stands = new ArrayDeque<>();
      Deque<Long> gone = new ArrayDeque<>();
      for (int step = 0; step < STEPS; step++) {
        int amount = 1 + random.nextInt(20);
        long expected = 0;
        switch (random.nextInt(3)) {
          case 0 -> {
            long each = random.nextInt(2000);
            for (int n = 0; n < amount; n++) {
              stands.addLast(each);
            }
            pool.in(amount, BigDecimal.valueOf(each * amount, 2));
          }
          case 1 -> {
            int some = Math.min(amount, stands.size());
            for (int n = 0; n < some; n++) {
              gone.addLast(stands.peekFirst());
              expected += stands.pollFirst();
            }
            if (some > 0) {
              assertEquals(BigDecimal.valueOf(expected, 2), out(pool, some), "seed " + seed);
            }
          }
          default -> {
            int some = Math.min(amount, gone.size());
            for (int n = 0; n < some; n++) {
              stands.addFirst(gone.peekLast());
              expected += gone.pollLast();
            }
            if (some > 0) {
              assertEquals(BigDecimal.valueOf(expected, 2), back(pool, some), "seed " + seed);
            }
          }
        }
        assertEquals(stands.size(), pool.amount());
        assertEquals(
            BigDecimal.valueOf(stands.stream().mapToLong(Long::longValue).sum(), 2),
            pool.value(),
            "seed " + seed);
      }
    }
  }

  /**
   * Moving average: a running fraction that is never rounded. Every posting may be off by half a
   * cent, and what it leaves stays with the goods, so the totals stay together.
   */
  @Test
  void moving_average_stays_by_a_running_fraction() {
    long seed = seed();
    for (int play = 0; play < PLAYS; play++) {
      Random random = new Random(seed + play);
      Pool pool = Pool.movingAverage(2);
      BigInteger numerator = BigInteger.ZERO; // cents that stand, as a fraction
      BigInteger denominator = BigInteger.ONE;
      long stands = 0;
      long came = 0;
      BigDecimal gone = BigDecimal.ZERO;
      for (int step = 0; step < STEPS; step++) {
        long amount = 1 + random.nextInt(20);
        if (stands <= amount || random.nextBoolean()) {
          long cents = random.nextInt(50000);
          pool.in(amount, BigDecimal.valueOf(cents, 2));
          numerator = numerator.add(denominator.multiply(BigInteger.valueOf(cents)));
          stands += amount;
          came += cents;
        } else {
          gone = gone.add(out(pool, amount));
          numerator = numerator.multiply(BigInteger.valueOf(stands - amount));
          denominator = denominator.multiply(BigInteger.valueOf(stands));
          BigInteger common = numerator.gcd(denominator);
          numerator = numerator.divide(common);
          denominator = denominator.divide(common);
          stands -= amount;
        }
        BigInteger pooled = pool.value().unscaledValue();
        BigInteger offTwice =
            pooled.multiply(denominator).subtract(numerator).abs().multiply(BigInteger.TWO);
        // |pool − fraction| ≤ half a cent × number of postings so far, and far less as a rule
        assertTrue(
            offTwice.compareTo(denominator.multiply(BigInteger.valueOf(step + 1))) <= 0,
            "seed " + seed + " step " + step);
        assertEquals(BigDecimal.valueOf(came, 2), gone.add(pool.value()), "seed " + seed);
        assertEquals(stands, pool.amount());
      }
    }
  }

  @Test
  void parts_sum_to_the_whole_and_none_is_off_by_a_cent() {
    long seed = seed();
    Random random = new Random(seed);
    for (int play = 0; play < 2000; play++) {
      int lines = 1 + random.nextInt(7);
      BigDecimal total = BigDecimal.valueOf(random.nextInt(200001) - 100000, 2);
      java.util.List<BigDecimal> weights =
          random.ints(lines, 0, 500).mapToObj(BigDecimal::valueOf).toList();
      java.util.List<BigDecimal> parts = FairCents.of(total, weights);
      assertEquals(total, parts.stream().reduce(BigDecimal::add).orElseThrow(), "seed " + seed);
      BigDecimal sum = weights.stream().reduce(BigDecimal::add).orElseThrow();
      for (int n = 0; n < lines && sum.signum() > 0; n++) {
        BigDecimal off = parts.get(n).multiply(sum).subtract(total.multiply(weights.get(n))).abs();
        assertTrue(off.compareTo(sum.movePointLeft(2)) < 0, "seed " + seed + " " + weights);
      }
    }
  }

  private static long seed() {
    Long given = Long.getLong("barreltally.seed");
    long seed = given == null ? new Random().nextLong() : given;
    System.out.println("Seed of pools: -Dbarreltally.seed=" + seed);
    return seed;
  }
}
