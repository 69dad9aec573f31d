package org.barreltally.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Temperatures between the physics (°C) and the people (°F). */
final class Temperatures {

  private Temperatures() {}

  static double celsius(double fahrenheit) {
    return (fahrenheit - 32) * 5 / 9;
  }

  /** For a sentence: {@code 212 °F}, at most one decimal; not a number stays that. */
  static String inFahrenheit(double celsius) {
    if (!Double.isFinite(celsius)) {
      return celsius + " °F";
    }
    return BigDecimal.valueOf(celsius * 9 / 5 + 32)
            .setScale(1, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString()
        + " °F";
  }
}
