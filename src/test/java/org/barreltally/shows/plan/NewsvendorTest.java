package org.barreltally.shows.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

class NewsvendorTest {

  /** Each of these demands seen once. */
  private record Seen(int... demands) implements Demand {
    @Override
    public double mean() {
      return Arrays.stream(demands).average().orElseThrow();
    }

    @Override
    public double atLeast(long pieces) {
      return Arrays.stream(demands).filter(d -> d >= pieces).count() / (double) demands.length;
    }
  }

  private record Normal(NormalDistribution distribution) implements Demand {
    @Override
    public double mean() {
      return distribution.getNumericalMean();
    }

    @Override
    public double atLeast(long pieces) {
      return 1 - distribution.cumulativeProbability(pieces - 1.0);
    }

    @Override
    public double atMost(long pieces) {
      return distribution.cumulativeProbability(pieces);
    }
  }

  /**
   * A usual lecture example: price 10, cost 4, salvage 1, so 6 for one short and 3 for one over,
   * ratio 2/3, which demands of 10, 12, 14, 14, 16, 20 reach exactly at 14 (4 of 6).
   */
  @Test
  void demand_seen_six_times_is_met_two_times_in_three() {
    Costs costs = new Costs(10 - 4, 4 - 1);
    assertEquals(2 / 3.0, costs.criticalRatio(), 1e-15);
    assertEquals(14, Newsvendor.quantity(new Seen(10, 12, 14, 14, 16, 20), costs));
  }

  /** A ratio that is a step of the distribution is met by it in spite of the last binary digit. */
  @Test
  void a_ratio_on_a_step_takes_no_piece_too_many() {
    for (int over = 1; over < 400; over++) {
      int[] demands = new int[over + 7];
      Arrays.setAll(demands, i -> i + 1);
      // 7 of over + 7 times demand is at most 7
      assertEquals(7, Newsvendor.quantity(new Seen(demands), new Costs(7, over)));
    }
  }

  /**
   * A published exercise: normal demand 1000 ± 200, cost 100, profit 40, loss 10: ratio 0.8, 1000 +
   * 200 · 0.8416 = 1168.3, rounded up 1169.
   */
  @Test
  void normal_demand_is_rounded_up() {
    assertEquals(
        1169,
        Newsvendor.quantity(new Normal(new NormalDistribution(1000, 200)), new Costs(40, 10)));
  }

  @Test
  void the_last_piece_taken_pays_and_the_next_does_not() {
    NegativeBinomial demand = new NegativeBinomial(3, 40);
    for (double overage : new double[] {0.1, 0.5, 2, 7.5, 30}) {
      Costs costs = new Costs(7.5, overage);
      long quantity = Newsvendor.quantity(demand, costs);
      assertTrue(quantity == 0 || costs.gain(demand.atLeast(quantity)) > -1e-9);
      assertTrue(costs.gain(demand.atLeast(quantity + 1)) <= 1e-9);
    }
  }

  @Test
  void carting_back_for_next_to_nothing_still_ends() {
    NegativeBinomial demand = new NegativeBinomial(3, 40);
    assertEquals(demand.quantile(0.999), Newsvendor.quantity(demand, new Costs(1, 1e-12)));
  }
}
