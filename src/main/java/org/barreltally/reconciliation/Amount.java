package org.barreltally.reconciliation;

import org.barreltally.measure.Syrup;

/**
 * So much syrup, and how many jars of it.
 *
 * @param jarGrams of the grams those in jars; the others are in bulk
 * @param mL at 20 °C (68 °F)
 */
public record Amount(double grams, double jarGrams, double mL, long pieces) {

  static final Amount NONE = new Amount(0, 0, 0, 0);

  /** Taken for jars whose lot nobody wrote down: syrup as the trade mostly fills it. */
  private static final double USUAL_BRIX = 66.9;

  static Amount of(Sum sum) {
    double brix = sum.brix() == null ? USUAL_BRIX : sum.brix();
    return new Amount(
        sum.grams(), sum.jarGrams(), new Syrup(brix).mLAt20(1) * sum.grams(), sum.pieces());
  }

  /** Of the grams those in bulk. */
  public double bulkGrams() {
    return grams - jarGrams;
  }

  Amount plus(Amount other) {
    return new Amount(
        grams + other.grams, jarGrams + other.jarGrams, mL + other.mL, pieces + other.pieces);
  }

  Amount minus(Amount other) {
    return plus(other.negated());
  }

  Amount negated() {
    return new Amount(-grams, -jarGrams, -mL, -pieces);
  }
}
