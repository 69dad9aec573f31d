package org.barreltally.measure;

/**
 * Syrup (or sap) of a true °Brix, 0 to 70: how mass, volume and weight in air belong together.
 * Grams are true mass unless they are called weight.
 */
public record Syrup(double brix) {

  private static final double KG_PER_M3_IN_G_PER_ML = 1e-3;

  /**
   * @throws OutsideDensityRange when brix is not 0..70
   */
  public Syrup {
    Sucrose.checkBrix(brix);
  }

  /** Density at 20 °C (68 °F), kg/m³. */
  public double density20() {
    return densityAt(20);
  }

  /**
   * Density, kg/m³.
   *
   * @throws OutsideDensityRange when celsius is not 0..100
   */
  public double densityAt(double celsius) {
    return Sucrose.density(brix, celsius);
  }

  /** Volume at 20 °C (68 °F), where net contents are stated, mL. */
  public double mLAt20(double grams) {
    return mLAt(grams, 20);
  }

  /** Volume at a temperature, mL. */
  public double mLAt(double grams, double celsius) {
    return grams / (densityAt(celsius) * KG_PER_M3_IN_G_PER_ML);
  }

  public double gramsForML20(double mL) {
    return gramsForMLAt(mL, 20);
  }

  /** Mass of a volume measured at a temperature, g. */
  public double gramsForMLAt(double mL, double celsius) {
    return mL * densityAt(celsius) * KG_PER_M3_IN_G_PER_ML;
  }

  /** What a scale shows, g. */
  public double weightInAir(double grams) {
    return Air.weight(grams, density20());
  }

  /** True mass of what a scale showed, g. */
  public double massFromWeight(double gramsInAir) {
    return Air.mass(gramsInAir, density20());
  }
}
