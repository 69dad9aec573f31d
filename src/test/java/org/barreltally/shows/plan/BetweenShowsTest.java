package org.barreltally.shows.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Where the spread lies, found again from seeded shows. */
class BetweenShowsTest {

  @Test
  void shows_that_keep_their_own_level_are_told_from_shows_that_differ_each_time() {
    assertTrue(share(new Random(11), 3, 1e6) >= 0.9);
    assertTrue(share(new Random(12), 1e6, 3) <= 0.1);
  }

  @Test
  void half_is_taken_where_nothing_was_visited_twice() {
    assertEquals(0.5, BetweenShows.share(List.of()));
  }

  @Test
  void the_parts_of_the_spread_make_up_the_whole() {
    for (double share : new double[] {0.1, 0.5, 1}) {
      Spread spread = Spread.of(2.5, share);
      assertEquals(1 + 1 / 2.5, (1 + spread.between()) * (1 + spread.within()), 1e-12);
    }
  }

  @Test
  void where_all_spread_lies_between_shows_it_is_the_conjugate_update() {
    ShowRate rate = new ShowRate(new GammaPoisson(3, 0.5), 0);
    ShowRate after = rate.after(new CensoredCount(7, false, 2, 1));
    assertEquals(new GammaPoisson(10, 2.5), after.usual());
    NegativeBinomial demand = after.demand(4);
    assertEquals(10, demand.shape(), 1e-9);
    assertEquals(16, demand.mean(), 1e-9);
  }

  /** Given the rate, occasions of shape k tell no more of it than k pieces counted would. */
  @Test
  void endless_visitors_tell_no_more_than_one_occasion_can() {
    ShowRate rate = new ShowRate(new GammaPoisson(3, 1), 1 / 4.0);
    ShowRate after = rate.after(new CensoredCount(3_000_000, false, 1e6, 1));
    assertEquals(3 + 4, after.usual().shape(), 0.01);
  }

  private static double share(Random random, double between, double within) {
    List<List<CensoredCount>> shows = new ArrayList<>();
    List<CensoredCount> all = new ArrayList<>();
    for (int show = 0; show < 60; show++) {
      double usual = Dice.gamma(random, between, 25);
      List<CensoredCount> times = new ArrayList<>();
      for (int n = 0; n < 4; n++) {
        times.add(new CensoredCount(Dice.negativeBinomial(random, within, usual), false, 1, 1));
      }
      shows.add(times);
      all.addAll(times);
    }
    return BetweenShows.share(List.of(new BetweenShows.Revisited(Fitting.likeliest(all), shows)));
  }
}
