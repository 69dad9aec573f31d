package org.barreltally.shows.plan;

/**
 * The room one jar takes on a table, with the gap to its neighbours, in inches.
 *
 * @param width along the aisle, above 0
 * @param depth front to back, above 0
 */
record Footprint(double width, double depth) {

  private static final double CUBIC_INCH_ML = 16.387064;

  /** Height over width of jugs and jars; no source, measured on none: the owner can say better. */
  private static final double SLENDERNESS = 1.4;

  /** Head space and wall above the nominal contents. */
  private static final double OUTSIDE_OVER_CONTENTS = 1.15;

  private static final double GAP = 0.4;

  /** A round jar of so many millilitres, where nobody measured it. */
  static Footprint ofContents(double mL) {
    double volume = mL * OUTSIDE_OVER_CONTENTS / CUBIC_INCH_ML;
    double across = Math.cbrt(4 * volume / (Math.PI * SLENDERNESS)) + GAP;
    return new Footprint(across, across);
  }
}
