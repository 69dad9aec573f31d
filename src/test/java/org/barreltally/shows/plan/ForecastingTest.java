package org.barreltally.shows.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.barreltally.measure.ColorClass;
import org.junit.jupiter.api.Test;

/** Demand from past shows of an invented maker, on seeded dice. */
class ForecastingTest {

  private static final JarKind PINT = new JarKind("PT", ColorClass.AMBER);
  private static final JarKind HALF = new JarKind("HP", ColorClass.AMBER);
  private static final JarKind NEW_GRADE = new JarKind("PT", ColorClass.GOLDEN);
  private static final LocalDate DAY = LocalDate.of(2026, 10, 3);
  private static final FirstGuess USUAL = new FirstGuess(Map.of(), FirstGuess.USUAL);

  @Test
  void without_history_it_is_the_owners_guess_by_visitors_and_wide() {
    Forecast own = forecast(coming(2_000), List.of(), guess(PINT, 1.5));
    assertEquals(30, own.demand().mean(), 0.01);
    assertEquals(Forecast.Guess.OWNER, own.guess());
    long high = own.demand().quantile(0.9);
    assertTrue(high > 50 && high < 80, "high " + high);
    Forecast shared = forecast(coming(2_000), List.of(), USUAL);
    assertEquals(40, shared.demand().mean(), 0.01);
  }

  /**
   * Reckoned apart with scipy 1.17.1: the fit of one guess of 30 by scipy.optimize.minimize has
   * shape 3.377, so the demand has shape 1.729, and scipy.stats.nbinom.ppf gives 6, 61 and 72.
   */
  @Test
  void a_guess_of_thirty_asks_for_seventy_two_where_running_out_costs_fifteen_times_more() {
    NegativeBinomial demand = forecast(coming(2_400), List.of(), guess(PINT, 1.25)).demand();
    assertEquals(1.729, demand.shape(), 0.005);
    assertEquals(6, demand.quantile(0.1));
    assertEquals(61, demand.quantile(0.9));
    assertEquals(72, Newsvendor.quantity(demand, new Costs(0.55 * 15 + 1, 0.6)));
  }

  @Test
  void without_history_and_visitors_there_is_no_forecast() {
    ComingShow coming = new ComingShow("fair", DAY, 2, null);
    assertTrue(Forecasting.of(coming, List.of(), Set.of(PINT), USUAL).isEmpty());
  }

  @Test
  void a_new_grade_is_guessed_from_the_other_grades_of_its_container() {
    List<PastTaking> past = new ArrayList<>();
    for (int n = 1; n <= 6; n++) {
      past.add(taking("fair " + n, n, PINT, 60, 30, 2_000));
      past.add(taking("fair " + n, n, HALF, 200, 120, 2_000));
    }
    Forecast forecast =
        Forecasting.of(coming(2_000), past, Set.of(NEW_GRADE), USUAL).get(NEW_GRADE);
    assertEquals(30, forecast.demand().mean(), 0.5);
    assertEquals(Forecast.Guess.OTHER_KINDS, forecast.guess());
  }

  @Test
  void records_of_this_show_pull_the_forecast_from_what_other_shows_sold() {
    List<PastTaking> others = new ArrayList<>();
    int[] sold = {12, 31, 20, 8, 26, 44, 15, 19, 23, 10, 34, 17};
    for (int n = 0; n < sold.length; n++) {
      others.add(taking("fair " + n, n + 1, PINT, 60, sold[n], 2_000));
    }
    double pooled = forecast(coming(2_000), others, USUAL).demand().mean();
    assertEquals(21.6, pooled, 2);
    double last = pooled;
    for (int times = 1; times <= 4; times++) {
      others.add(taking("fair", times, PINT, 90, 60, 2_000));
      double mean = forecast(coming(2_000), others, USUAL).demand().mean();
      assertTrue(mean > last && mean < 62, times + " times: " + mean);
      last = mean;
    }
    assertTrue(last > 45, "after four times " + last);
  }

  @Test
  void selling_out_raises_the_forecast_above_the_same_count_with_jars_left() {
    List<PastTaking> left = new ArrayList<>();
    List<PastTaking> out = new ArrayList<>();
    for (int n = 1; n <= 3; n++) {
      left.add(taking("fair", n, PINT, 41, 40, 2_000));
      out.add(taking("fair", n, PINT, 40, 40, 2_000));
    }
    double sharp = forecast(coming(2_000), left, USUAL).demand().mean();
    double censored = forecast(coming(2_000), out, USUAL).demand().mean();
    assertTrue(censored > sharp * 1.1, sharp + " against " + censored);
  }

  @Test
  void twice_the_visitors_of_a_show_known_well_are_twice_the_demand() {
    List<PastTaking> past = new ArrayList<>();
    for (int n = 1; n <= 8; n++) {
      past.add(taking("fair", n, PINT, 90, 36 + n % 3, 2_000));
    }
    double once = forecast(coming(2_000), past, USUAL).demand().mean();
    double twice = forecast(coming(4_000), past, USUAL).demand().mean();
    assertEquals(37, once, 1.5);
    assertEquals(2, twice / once, 0.1);
  }

  @Test
  void visitors_known_of_too_few_shows_give_way_to_days() {
    List<PastTaking> past = new ArrayList<>();
    for (int n = 1; n <= 6; n++) {
      past.add(taking("fair", n, PINT, 90, 40, n == 1 ? 2_000 : null));
    }
    assertEquals(40, forecast(coming(9_000), past, USUAL).demand().mean(), 2);
  }

  /**
   * Shows whose usual rates spread by shape 4 and whose single times spread by shape 8, each
   * visited five times: demand should stay within the 10 % and 90 % marks about eight times in ten.
   */
  @Test
  void eight_times_in_ten_demand_falls_between_low_and_high() {
    Random random = new Random(20260919);
    int within = 0;
    int rounds = 60;
    for (int round = 0; round < rounds; round++) {
      List<PastTaking> past = new ArrayList<>();
      double here = 0;
      for (int show = 0; show < 12; show++) {
        double usual = Dice.gamma(random, 4, 30);
        here = show == 0 ? usual : here;
        for (int times = 1; times <= 5; times++) {
          long wanted = Dice.negativeBinomial(random, 8, usual);
          long taken = 25 + random.nextInt(30);
          past.add(
              taking(
                  show == 0 ? "fair" : "fair " + show,
                  times,
                  PINT,
                  taken,
                  Math.min(wanted, taken),
                  2_000));
        }
      }
      NegativeBinomial demand = forecast(coming(2_000), past, USUAL).demand();
      long wanted = Dice.negativeBinomial(random, 8, here);
      within += wanted >= demand.quantile(0.1) && wanted <= demand.quantile(0.9) ? 1 : 0;
    }
    // four standard deviations of a binomial about 0.8 are 0.21
    assertEquals(0.8, within / (double) rounds, 0.16, "within: " + within);
  }

  private static Forecast forecast(ComingShow coming, List<PastTaking> past, FirstGuess guess) {
    return Forecasting.of(coming, past, Set.of(PINT), guess).get(PINT);
  }

  private static FirstGuess guess(JarKind jar, double per100) {
    return new FirstGuess(Map.of(jar, per100), FirstGuess.USUAL);
  }

  private static ComingShow coming(int visitors) {
    return new ComingShow("fair", DAY, 2, visitors);
  }

  private static PastTaking taking(
      String show, int yearsAgo, JarKind jar, long taken, long sold, Integer visitors) {
    return new PastTaking(
        show, DAY.minusYears(1).minusDays(yearsAgo), jar, taken, sold, sold == taken, 2, visitors);
  }
}
