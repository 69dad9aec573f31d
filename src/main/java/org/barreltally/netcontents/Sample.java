package org.barreltally.netcontents;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;

/** Net weights of the jars that were drawn, g in air; at least two. */
record Sample(List<BigDecimal> weights) {

  /** Noise of the arithmetic, far below any scale, g. */
  static final double SAME_GRAMS = 1e-9;

  Sample {
    weights = List.copyOf(weights);
  }

  int size() {
    return weights.size();
  }

  double mean() {
    return weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add).doubleValue() / size();
  }

  /** Of the sample, with n − 1. */
  double standardDeviation() {
    double mean = mean();
    double squares =
        weights.stream()
            .mapToDouble(w -> (w.doubleValue() - mean) * (w.doubleValue() - mean))
            .sum();
    return Math.sqrt(squares / (size() - 1));
  }

  double shortest() {
    return Collections.min(weights).doubleValue();
  }

  /** How many are short of the nominal weight by more than so many grams. */
  int shortBy(double nominalGrams, double grams) {
    return (int)
        weights.stream().filter(w -> nominalGrams - w.doubleValue() > grams + SAME_GRAMS).count();
  }
}
