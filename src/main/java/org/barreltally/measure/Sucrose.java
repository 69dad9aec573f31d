package org.barreltally.measure;

import org.apache.commons.csv.CSVRecord;

/**
 * Density of sucrose solutions, which syrup is taken to be: 0 to 70 °Brix, 0 to 100 °C. Source: the
 * ICUMSA density equation after measurements of the Physikalisch-Technische Bundesanstalt; the
 * constants are in {@code db/reference/sucrose_density_coefficients.csv} and {@code
 * water_density_coefficients.csv}.
 */
public final class Sucrose {
  public static final double BRIX_MAX = 70;
  public static final double CELSIUS_MAX = 100;

  private static final double SLACK = 1e-9;
  private static final double TOLERANCE = 1e-12;
  private static final int MOST_STEPS = 100;

  /** b[i * POWERS_OF_K + j] belongs to w^(i+1) k^j. */
  private static final int POWERS_OF_K = 5;

  private static final double[] B = sucroseCoefficients();
  private static final double[] WATER_TOP = waterCoefficients("numerator");
  private static final double[] WATER_BOTTOM = waterCoefficients("denominator");
  private static final double WATER_20 = density(0, 20);

  private Sucrose() {}

  /**
   * Density in kg/m³ of a solution of the given °Brix at the given temperature.
   *
   * @throws OutsideDensityRange when brix is not 0..70 or celsius not 0..100
   */
  public static double density(double brix, double celsius) {
    checkBrix(brix);
    checkCelsius(celsius);
    return water(celsius) + solute(brix / 100, (celsius - 20) / 100);
  }

  /**
   * The °Brix of a solution that has the given density (kg/m³) at the given temperature: the
   * inverse of {@link #density}, to 1e-9 °Brix or better. Newton's method, falling back on
   * bisection.
   *
   * @throws OutsideDensityRange when no solution of 0..70 °Brix has it, or celsius is not 0..100
   */
  public static double brixAt(double density, double celsius) {
    checkCelsius(celsius);
    double k = (celsius - 20) / 100;
    double wanted = density - water(celsius);
    double low = 0;
    double high = BRIX_MAX / 100;
    double most = solute(high, k);
    if (!(wanted >= -SLACK && wanted <= most + SLACK)) {
      throw new OutsideDensityRange(
          "density", density, water(celsius), water(celsius) + most, "kg/m³");
    }
    double w = high * wanted / most;
    for (int step = 0; step < MOST_STEPS; step++) {
      double excess = solute(w, k) - wanted;
      if (excess > 0) {
        high = w;
      } else {
        low = w;
      }
      double next = w - excess / slope(w, k);
      if (!(next >= low && next <= high)) {
        next = (low + high) / 2;
      }
      if (Math.abs(next - w) < TOLERANCE) {
        return next * 100;
      }
      w = next;
    }
    return w * 100;
  }

  /**
   * Specific gravity 20/20: density at 20 °C over that of water at 20 °C.
   *
   * @throws OutsideDensityRange when brix is not 0..70
   */
  public static double specificGravity2020(double brix) {
    return density(brix, 20) / WATER_20;
  }

  /** The °Brix of a specific gravity 20/20, the inverse of {@link #specificGravity2020}. */
  static double brixOfSpecificGravity2020(double gravity) {
    return brixAt(gravity * WATER_20, 20);
  }

  static void checkBrix(double brix) {
    if (!(brix >= -SLACK && brix <= BRIX_MAX + SLACK)) {
      throw new OutsideDensityRange("brix", brix, 0, BRIX_MAX, "°Bx");
    }
  }

  private static void checkCelsius(double celsius) {
    if (!(celsius >= -SLACK && celsius <= CELSIUS_MAX + SLACK)) {
      throw new OutsideDensityRange("temperature", celsius, 0, CELSIUS_MAX, "°C");
    }
  }

  /** What sucrose adds to the density of water, kg/m³. */
  private static double solute(double w, double k) {
    double sum = 0;
    for (int i = B.length - POWERS_OF_K; i >= 0; i -= POWERS_OF_K) {
      sum = (sum + ofTemperature(i, k)) * w;
    }
    return sum;
  }

  /** Derivative of {@link #solute} by w; positive over the whole range. */
  private static double slope(double w, double k) {
    double sum = 0;
    for (int i = B.length - POWERS_OF_K; i >= 0; i -= POWERS_OF_K) {
      int power = i / POWERS_OF_K + 1;
      sum = sum * w + power * ofTemperature(i, k);
    }
    return sum;
  }

  private static double ofTemperature(int from, double k) {
    double sum = 0;
    for (int j = from + POWERS_OF_K - 1; j >= from; j--) {
      sum = sum * k + B[j];
    }
    return sum;
  }

  private static double water(double celsius) {
    double top = 0;
    double bottom = 0;
    for (int n = WATER_TOP.length - 1; n >= 0; n--) {
      top = top * celsius + WATER_TOP[n];
      bottom = bottom * celsius + WATER_BOTTOM[n];
    }
    return top / bottom;
  }

  private static double[] sucroseCoefficients() {
    var rows = ReferenceTable.rows("sucrose_density_coefficients.csv");
    double[] b = new double[rows.size() * POWERS_OF_K];
    for (CSVRecord row : rows) {
      int i = Integer.parseInt(row.get("power_of_w")) - 1;
      for (int j = 0; j < POWERS_OF_K; j++) {
        b[i * POWERS_OF_K + j] = ReferenceTable.number(row, "k" + j);
      }
    }
    return b;
  }

  private static double[] waterCoefficients(String column) {
    return ReferenceTable.rows("water_density_coefficients.csv").stream()
        .mapToDouble(row -> ReferenceTable.number(row, column))
        .toArray();
  }
}
