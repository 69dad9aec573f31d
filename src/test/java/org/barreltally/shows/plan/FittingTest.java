package org.barreltally.shows.plan;

import static org.barreltally.shows.plan.Reckoned.number;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against scipy, see reference/negative_binomial.py, against a grid, and on seeded shows. */
class FittingTest {

  @Test
  void the_likelihood_of_sold_out_shows_agrees_with_a_statistics_library() {
    var rows = Reckoned.rows("sold_out_likelihood.csv");
    assertEquals(36, rows.size());
    for (CSVRecord row : rows) {
      double expected = number(row, "log_likelihood");
      double found =
          new CensoredLikelihood(Reckoned.sample(row.get("sample")))
              .at(number(row, "mean"), number(row, "shape"));
      assertEquals(expected, found, 1e-9 * Math.abs(expected), row::toString);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"few", "many", "mostly-sold-out", "rare"})
  void the_maximum_agrees_with_a_statistics_library_and_no_grid_point_beats_it(String sample) {
    CSVRecord row =
        Reckoned.rows("sold_out_maximum.csv").stream()
            .filter(r -> r.get("sample").equals(sample))
            .findFirst()
            .orElseThrow();
    List<CensoredCount> counts = Reckoned.sample(sample);
    Fit fit = Fitting.likeliest(counts);
    assertEquals(number(row, "log_likelihood"), fit.logLikelihood(), 1e-5);
    assertEquals(1, fit.mean() / number(row, "mean"), 2e-3);
    assertEquals(1, fit.shape() / number(row, "shape"), 5e-3);
    CensoredLikelihood likelihood = new CensoredLikelihood(counts);
    for (double log = -2; log <= 2; log += 0.02) {
      for (double logShape = -2; logShape <= 3; logShape += 0.02) {
        double there = likelihood.at(fit.mean() * Math.exp(log), fit.shape() * Math.exp(logShape));
        assertTrue(there <= fit.logLikelihood() + 1e-6, log + " " + logShape);
      }
    }
  }

  @Test
  void shape_and_mean_of_seeded_shows_are_found_again_though_a_third_sold_out() {
    List<CensoredCount> counts = shows(new Random(20261003), 4_000, 11, 2.5, 13);
    long soldOut = counts.stream().filter(CensoredCount::soldOut).count();
    assertTrue(soldOut > 1_000 && soldOut < 1_800, "sold out " + soldOut);
    Fit fit = Fitting.likeliest(counts);
    // standard errors here are about 1.2 % of the mean and 4 % of the shape
    assertEquals(11, fit.mean(), 11 * 0.04);
    assertEquals(2.5, fit.shape(), 2.5 * 0.13);
    double naive =
        counts.stream().mapToDouble(CensoredCount::pieces).sum()
            / counts.stream().mapToDouble(CensoredCount::exposure).sum();
    assertTrue(naive < 9, "without the survival term it would be under " + naive);
  }

  @Test
  void shows_no_more_unlike_than_chance_give_the_largest_shape() {
    List<CensoredCount> alike =
        List.of(count(10, false), count(10, false), count(11, false), count(9, false));
    assertTrue(Fitting.likeliest(alike).shape() > 1_000);
    assertEquals(10, Fitting.likeliest(alike).mean(), 0.02);
  }

  @Test
  void what_was_held_beforehand_counts_for_a_quarter_of_a_show() {
    Beforehand guess = Beforehand.guessing(20, 1);
    assertEquals(20, Fitting.likeliest(List.of(), guess).mean(), 0.1);
    double few = Fitting.likeliest(List.of(count(10, false), count(12, false)), guess).mean();
    assertTrue(few > 11 && few < 13, "few: " + few);
    double many = Fitting.likeliest(Reckoned.sample("many"), Beforehand.guessing(20, 3)).mean();
    assertEquals(Fitting.likeliest(Reckoned.sample("many")).mean(), many, 0.1);
  }

  @Test
  void the_mean_for_a_known_shape_is_the_likeliest_of_a_fine_grid() {
    List<CensoredCount> counts = Reckoned.sample("few");
    Beforehand guess = Beforehand.guessing(6, 2);
    double mean = Fitting.likeliestMean(counts, 3, guess);
    CensoredLikelihood likelihood = new CensoredLikelihood(counts);
    double best = likelihood.at(mean, 3) + guess.logDensity(mean, 3);
    for (double other = 0.5; other < 60; other += 0.05) {
      assertTrue(likelihood.at(other, 3) + guess.logDensity(other, 3) <= best + 1e-9);
    }
  }

  @Test
  void nothing_sold_and_nothing_guessed_cannot_be_fitted() {
    List<CensoredCount> nothing = List.of(count(0, false), count(0, true));
    assertThrows(IllegalArgumentException.class, () -> Fitting.likeliest(nothing));
  }

  private static CensoredCount count(long pieces, boolean soldOut) {
    return new CensoredCount(pieces, soldOut, 1, 1);
  }

  private static List<CensoredCount> shows(
      Random random, int number, double mean, double shape, int takenPerExposure) {
    List<CensoredCount> counts = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      double exposure = 1 + random.nextInt(4);
      long wanted = Dice.negativeBinomial(random, shape, mean * exposure);
      long taken = (long) (takenPerExposure * exposure);
      counts.add(new CensoredCount(Math.min(wanted, taken), wanted >= taken, exposure, 1));
    }
    return counts;
  }
}
