package org.barreltally.shows.plan;

import static org.barreltally.shows.plan.Reckoned.number;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** Against scipy.stats.nbinom, see reference/negative_binomial.py. */
class NegativeBinomialTest {

  @Test
  void probabilities_agree_with_a_statistics_library() {
    var rows = Reckoned.rows("negative_binomial.csv");
    assertEquals(120, rows.size());
    for (CSVRecord row : rows) {
      NegativeBinomial demand = new NegativeBinomial(number(row, "shape"), number(row, "mean"));
      long pieces = Long.parseLong(row.get("pieces"));
      close(number(row, "log_probability"), demand.logProbability(pieces), 1e-9, row);
      close(number(row, "at_most"), demand.atMost(pieces), 1e-9, row);
      close(number(row, "at_least"), demand.atLeast(pieces), 1e-9, row);
    }
  }

  @Test
  void at_least_and_fewer_make_one() {
    NegativeBinomial demand = new NegativeBinomial(2.5, 31);
    for (long pieces = 0; pieces < 200; pieces++) {
      assertEquals(1, demand.atMost(pieces - 1) + demand.atLeast(pieces), 1e-12);
    }
  }

  @Test
  void probabilities_sum_to_one_with_the_mean_and_variance_of_the_mixture() {
    NegativeBinomial demand = new NegativeBinomial(2.5, 31);
    double sum = 0;
    double mean = 0;
    double square = 0;
    for (int pieces = 0; pieces < 2_000; pieces++) {
      double p = demand.probability(pieces);
      sum += p;
      mean += p * pieces;
      square += p * pieces * pieces;
    }
    assertEquals(1, sum, 1e-9);
    assertEquals(31, mean, 1e-7);
    assertEquals(31 + 31 * 31 / 2.5, square - mean * mean, 1e-5);
  }

  @Test
  void a_large_shape_is_poisson() {
    // Poisson with mean 3: P(0) = e^-3, P(at most 2) = 8.5 e^-3
    NegativeBinomial demand = new NegativeBinomial(1e9, 3);
    assertEquals(Math.exp(-3), demand.probability(0), 1e-8);
    assertEquals(8.5 * Math.exp(-3), demand.atMost(2), 1e-8);
  }

  @Test
  void the_quantile_is_the_least_number_that_reaches_the_probability() {
    NegativeBinomial demand = new NegativeBinomial(2.5, 31);
    for (double probability = 0; probability < 0.9999; probability += 0.0101) {
      long pieces = demand.quantile(probability);
      assertTrue(demand.atMost(pieces) >= probability - 1e-12);
      assertTrue(demand.atMost(pieces - 1) < probability || pieces == 0);
    }
  }

  @Test
  void no_shape_or_mean_of_nothing() {
    assertThrows(IllegalArgumentException.class, () -> new NegativeBinomial(0, 1));
    assertThrows(IllegalArgumentException.class, () -> new NegativeBinomial(1, 0));
    assertThrows(IllegalArgumentException.class, () -> new NegativeBinomial(Double.NaN, 1));
  }

  private static void close(double expected, double found, double relative, CSVRecord row) {
    assertEquals(expected, found, relative * Math.max(Math.abs(expected), 1e-290), row::toString);
  }
}
