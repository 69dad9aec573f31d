package org.barreltally.measure;

/**
 * A glass hydrometer with a Brix scale that reads true at its reference temperature (60 °F or 68
 * °F). Elsewhere syrup has another density and the glass another volume: the instrument shows the
 * strength whose density at the reference is the syrup's density times 1 + γ (t − reference). The
 * cubic expansion of glass γ = 25e-6 per °C is that of ISO 649-1 for soda-lime hydrometers (from
 * memory). Surface tension is left out.
 *
 * <p>A true Brix is a mass fraction and the same at every temperature.
 */
public final class Hydrometer {
  /** Readings below this are refused: 35 °F. */
  public static final double CELSIUS_MIN = Temperatures.celsius(35);

  /** Readings above this are refused: 212 °F. */
  public static final double CELSIUS_MAX = Temperatures.celsius(212);

  private static final double GLASS = 25e-6;
  private static final double SLACK = 1e-9;

  private Hydrometer() {}

  /**
   * True °Brix of a reading, both uncertainties carried through.
   *
   * @param readingBrix what the scale shows
   * @param celsius temperature of the syrup
   * @param referenceCelsius temperature at which the scale is true, 0..100
   * @throws OutsideInstrumentRange when the syrup is not between 35 and 212 °F
   * @throws OutsideDensityRange when reading or result is not 0..70 °Bx
   */
  public static Uncertain trueBrix(
      Uncertain readingBrix, Uncertain celsius, double referenceCelsius) {
    return Uncertain.through(
        (reading, t) -> trueBrix(reading, t, referenceCelsius), readingBrix, celsius);
  }

  /** As {@link #trueBrix(Uncertain, Uncertain, double)}, for plain numbers. */
  public static double trueBrix(double readingBrix, double celsius, double referenceCelsius) {
    check(celsius);
    double floatsAt = Sucrose.density(readingBrix, referenceCelsius);
    return Sucrose.brixAt(floatsAt / glass(celsius, referenceCelsius), celsius);
  }

  /** What the scale shows in syrup of a true °Brix at a temperature; the inverse, same limits. */
  public static double reading(double trueBrix, double celsius, double referenceCelsius) {
    check(celsius);
    double density = Sucrose.density(trueBrix, celsius);
    return Sucrose.brixAt(density * glass(celsius, referenceCelsius), referenceCelsius);
  }

  private static double glass(double celsius, double referenceCelsius) {
    return 1 + GLASS * (celsius - referenceCelsius);
  }

  private static void check(double celsius) {
    if (!(celsius >= CELSIUS_MIN - SLACK && celsius <= CELSIUS_MAX + SLACK)) {
      throw new OutsideInstrumentRange(
          "A hydrometer", celsius, CELSIUS_MIN, CELSIUS_MAX, "Read it again within that.");
    }
  }
}
