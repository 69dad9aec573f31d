package org.barreltally.measure;

/**
 * Buoyancy of air: what a scale shows against the true mass. The scale is adjusted with weights of
 * 8000 kg/m³ in air of 1.2 kg/m³ (conventional mass, OIML D 28). Syrup weighs 0.08 percent less
 * than its mass.
 */
public final class Air {
  private static final double AIR = 1.2;
  private static final double WEIGHTS = 8000;

  private Air() {}

  /** True mass, in the unit of the weight, of what has the given density in kg/m³ (over 1.2). */
  public static double mass(double weightInAir, double density) {
    return weightInAir / fraction(density);
  }

  /** Weight a scale shows, in the unit of the mass, for the given density in kg/m³ (over 1.2). */
  public static double weight(double mass, double density) {
    return mass * fraction(density);
  }

  private static double fraction(double density) {
    if (!(density > AIR)) {
      throw new IllegalArgumentException("lighter than air: " + density);
    }
    return (1 - AIR / density) / (1 - AIR / WEIGHTS);
  }
}
