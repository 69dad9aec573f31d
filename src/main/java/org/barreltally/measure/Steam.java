package org.barreltally.measure;

/**
 * At what temperature water boils under a pressure, and the other way round. Source: IAPWS
 * Industrial Formulation 1997, region 4: the saturation-pressure equation and its backward
 * equation; the constants are in {@code db/reference/water_saturation_coefficients.csv}.
 *
 * <p>Air dissolved in the water and the depth of the pan are left out.
 */
public final class Steam {
  private static final double KELVIN = 273.15;
  private static final double PASCAL_IN_MPA = 1e-6;
  private static final double PASCAL_MIN = 611.213;
  private static final double PASCAL_MAX = 22.064e6;
  private static final double[] N = coefficients();

  private Steam() {}

  /**
   * The temperature at which water boils, °C.
   *
   * @param pascal absolute pressure, 611.213 Pa to 22.064 MPa
   */
  public static double boilingCelsius(double pascal) {
    if (!(pascal >= PASCAL_MIN && pascal <= PASCAL_MAX)) {
      throw new IllegalArgumentException("water does not boil at " + pascal + " Pa");
    }
    return boilingKelvin(pascal * PASCAL_IN_MPA) - KELVIN;
  }

  /**
   * The pressure under which water boils at a temperature, Pa.
   *
   * @param celsius 0 to 373.9
   */
  public static double pascalAt(double celsius) {
    if (!(celsius >= 0 && celsius <= 373.9)) {
      throw new IllegalArgumentException("water does not boil at " + celsius + " degrees");
    }
    return saturationMPa(celsius + KELVIN) / PASCAL_IN_MPA;
  }

  /** The backward equation, K. */
  static double boilingKelvin(double megapascal) {
    double beta = Math.pow(megapascal, 0.25);
    double e = beta * beta + N[2] * beta + N[5];
    double f = N[0] * beta * beta + N[3] * beta + N[6];
    double g = N[1] * beta * beta + N[4] * beta + N[7];
    double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
    double sum = N[9] + d;
    return (sum - Math.sqrt(sum * sum - 4 * (N[8] + N[9] * d))) / 2;
  }

  /** The saturation-pressure equation, MPa. */
  static double saturationMPa(double kelvin) {
    double theta = kelvin + N[8] / (kelvin - N[9]);
    double a = theta * theta + N[0] * theta + N[1];
    double b = N[2] * theta * theta + N[3] * theta + N[4];
    double c = N[5] * theta * theta + N[6] * theta + N[7];
    return Math.pow(2 * c / (-b + Math.sqrt(b * b - 4 * a * c)), 4);
  }

  private static double[] coefficients() {
    return ReferenceTable.rows("water_saturation_coefficients.csv").stream()
        .mapToDouble(row -> ReferenceTable.number(row, "value"))
        .toArray();
  }
}
