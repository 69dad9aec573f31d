package org.barreltally.netcontents;

import java.math.BigDecimal;

/**
 * The test of the mean, in the same form in both manners with factors of their own: the mean may be
 * under the nominal weight by no more than factor × standard deviation.
 */
record AverageTest(BigDecimal factor, double margin) {

  static AverageTest of(BigDecimal factor, Sample sample, double nominalGrams) {
    double slack = factor.doubleValue() * sample.standardDeviation();
    return new AverageTest(factor, sample.mean() - nominalGrams + slack);
  }

  Verdict verdict() {
    return Verdict.passIf(margin >= -Sample.SAME_GRAMS);
  }
}
