package org.barreltally.shows.plan;

/**
 * What the scarce things are worth at the margin: the Lagrange multipliers of the two limits.
 *
 * @param kg money per kilogram of load; 0 where it is not scarce
 * @param inch money per inch of shelf; 0 where it is not scarce
 */
record Prices(double kg, double inch) {

  static final Prices NONE = new Prices(0, 0);

  double of(double kilograms, double inches) {
    return kg * kilograms + inch * inches;
  }
}
