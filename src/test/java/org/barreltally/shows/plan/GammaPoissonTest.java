package org.barreltally.shows.plan;

import static org.barreltally.shows.plan.Reckoned.number;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class GammaPoissonTest {

  /**
   * Moments integrated by scipy.integrate.quad over the mixture, reference/negative_binomial.py.
   */
  @Test
  void after_selling_out_mean_and_variance_are_those_of_the_exact_belief() {
    var rows = Reckoned.rows("sold_out_belief.csv");
    assertEquals(6, rows.size());
    for (CSVRecord row : rows) {
      GammaPoisson before = new GammaPoisson(number(row, "shape"), number(row, "rate"));
      double pieces = number(row, "pieces");
      double exposure = number(row, "exposure");
      GammaPoisson after = before.afterAtLeast(pieces, exposure);
      double probability = number(row, "probability");
      assertEquals(probability, before.demand(exposure).atLeast((long) pieces), 1e-8 * probability);
      double mean = number(row, "mean");
      assertEquals(mean, after.mean(), 1e-7 * mean, row::toString);
      double variance = number(row, "variance");
      assertEquals(variance, after.shape() / Math.pow(after.rate(), 2), 1e-6 * variance);
    }
  }

  @Test
  void an_exact_count_is_the_conjugate_update() {
    GammaPoisson after = new GammaPoisson(2, 0.5).after(7, 1.5);
    assertEquals(9 / 2.0, after.mean(), 1e-12);
    assertEquals(9, after.shape());
  }

  @Test
  void selling_out_raises_the_mean_more_than_the_count_alone() {
    GammaPoisson before = new GammaPoisson(3, 0.1);
    for (int pieces = 1; pieces < 200; pieces++) {
      double sharp = before.after(pieces, 1).mean();
      assertTrue(before.afterAtLeast(pieces, 1).mean() > sharp);
    }
  }

  @Test
  void selling_out_of_nothing_tells_nothing() {
    GammaPoisson before = new GammaPoisson(3, 0.1);
    assertEquals(before, before.afterAtLeast(0, 1));
  }

  @Test
  void what_was_unheard_of_counts_as_the_least_of_it() {
    GammaPoisson after = new GammaPoisson(50, 1e6).afterAtLeast(5_000, 1);
    assertTrue(after.mean() > 50 / 1e6);
    assertTrue(Double.isFinite(after.shape()) && Double.isFinite(after.rate()));
  }
}
