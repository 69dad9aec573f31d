package org.barreltally.reconciliation;

import org.barreltally.measure.InstrumentKind;
import org.barreltally.measure.Instruments;
import org.barreltally.measure.Uncertain;

/** Standard uncertainties of what instruments and counts say, in grams or pieces. */
record Widths(Instruments instruments) {

  private static final double ONE_JAR = 1;
  private static final double HALF_A_JAR = 0.5;
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

  /** Pieces: each of so many lines right to one jar. */
  double counted(double lines) {
    return half(ONE_JAR) * Math.sqrt(lines);
  }

  /** Pieces: some lines counted by one person, some by two. */
  double counted(double once, double twice) {
    return Math.hypot(counted(once), half(HALF_A_JAR) * Math.sqrt(twice));
  }

  /** Grams of a jar nobody weighed. */
  double usualJar() {
    return USUAL_JAR_GRAMS * counted(1);
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
