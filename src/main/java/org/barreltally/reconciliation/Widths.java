package org.barreltally.reconciliation;

import org.barreltally.measure.InstrumentKind;
import org.barreltally.measure.Instruments;
import org.barreltally.measure.Uncertain;

/** Standard uncertainties of what instruments and counts say, in grams or pieces. */
record Widths(Instruments instruments) {

  /** Postings that are off by one jar (common practice). */
  private static final double MISCOUNTED_LINES = 0.02;

  /** Jars that are counted twice over or passed over (common practice). */
  private static final double MISCOUNTED_JARS = 0.001;

  /** How much seldomer two people who count apart are both wrong (common practice). */
  private static final double BY_TWO = 0.1;

  private static final double MISSED_SALES = 0.02;

  /** A pint of 66.9 °Bx, for jars of which nothing else is known. */
  private static final double USUAL_JAR_GRAMS = 628;

  double platform() {
    return half(instruments.halfWidth(InstrumentKind.PLATFORM_SCALE));
  }

  /** A weight that is the difference of two. */
  double platformTwice() {
    return platform() * Math.sqrt(2);
  }

  double bench() {
    return half(instruments.halfWidth(InstrumentKind.BENCH_SCALE));
  }

  /** Pieces, of so many counted in so many lines: miscounts by one, each on its own, add up. */
  double counted(double lines, double pieces) {
    return Math.sqrt(MISCOUNTED_LINES * lines + MISCOUNTED_JARS * Math.abs(pieces));
  }

  /** Pieces counted by two people. */
  double countedByTwo(double lines, double pieces) {
    return counted(lines, pieces) * Math.sqrt(BY_TWO);
  }

  /** Grams of a jar nobody weighed. */
  double usualJar() {
    return USUAL_JAR_GRAMS * counted(1, 1);
  }

  /** Of what was written down at a table. */
  double missed(double grams) {
    return half(MISSED_SALES * grams);
  }

  /** Rectangular over ± the half width (GUM, JCGM 100, 4.3.7). */
  private static double half(double halfWidth) {
    return Uncertain.within(0, halfWidth).u();
  }
}
