package org.barreltally.measure;

import java.util.Collection;
import java.util.List;
import org.barreltally.refusal.InvalidField;

/**
 * The limits of Grade A syrup where the maker sells, from {@code db/reference/jurisdictions.csv}
 * and {@code color_limits.csv}. They help the maker's records; the state agency decides.
 *
 * <p>A density limit stated at 60 °F (Vermont: 66.9 to 68.9) is a reading of an instrument that is
 * true at 60 °F, in syrup at 60 °F. There it shows the syrup's true Brix, a mass fraction that
 * temperature does not change, so the limit is compared with true Brix as it stands. What the
 * reference temperature changes is the correction of a reading made elsewhere: a 60 °F hydrometer
 * in such syrup at 68 °F shows less than 66.9.
 *
 * @param code stable name, {@code us-federal}
 * @param name for people
 * @param brixMin least true °Brix
 * @param brixMax greatest true °Brix
 * @param referenceCelsius where the rule's instruments read true, °C
 * @param limits color limits, lightest class first, the last one 0
 * @param source where the limits were read
 */
public record Jurisdiction(
    String code,
    String name,
    double brixMin,
    double brixMax,
    double referenceCelsius,
    List<ColorLimit> limits,
    String source) {

  /** The code of the limits a fresh start knows. */
  public static final String DEFAULT = "us-federal";

  /** Noise of the arithmetic, far below any instrument, °Bx. */
  private static final double SAME_BRIX = 1e-6;

  public Jurisdiction {
    limits = List.copyOf(limits);
  }

  /**
   * The grade of a measured %Tc, 0..100, and a taste. Between the steps of the table the value is
   * rounded down: 74.95 is not yet Golden. An off taste makes Processing Grade whatever the colour.
   *
   * @throws InvalidField when the transmittance is not 0..100 or the taste is missing
   */
  public ColorClass grade(double transmittance, Taste taste) {
    checkTransmittance(transmittance);
    if (taste == null) {
      throw new InvalidField("taste", "Taste the syrup and say what you found.");
    }
    if (taste.isOff()) {
      return ColorClass.PROCESSING;
    }
    return limits.stream()
        .filter(limit -> transmittance >= limit.transmittanceMin())
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(code + " has no limit of 0"))
        .colorClass();
  }

  /**
   * Whether a %Tc lies within so many points of a line between two classes, so that another meter
   * might say otherwise.
   *
   * @throws InvalidField when the transmittance is not 0..100
   */
  public boolean nearALine(double transmittance, double halfWidthPoints) {
    checkTransmittance(transmittance);
    return limits.stream()
        .mapToDouble(ColorLimit::transmittanceMin)
        .anyMatch(line -> line > 0 && Math.abs(transmittance - line) <= halfWidthPoints);
  }

  /** Whether a true °Brix is within the limits, both included; see above for limits at 60 °F. */
  public boolean densityWithin(double trueBrix20) {
    return trueBrix20 >= brixMin - SAME_BRIX && trueBrix20 <= brixMax + SAME_BRIX;
  }

  /**
   * @throws UnknownJurisdiction when the tables have no such code
   */
  public static Jurisdiction of(String code) {
    return Jurisdictions.of(code);
  }

  /** All of the tables, in their order. */
  public static Collection<Jurisdiction> all() {
    return Jurisdictions.all();
  }

  private static void checkTransmittance(double transmittance) {
    if (!(transmittance >= 0 && transmittance <= 100)) {
      throw new InvalidField(
          "transmittance", "Give the light transmittance in percent, from 0 to 100.");
    }
  }
}
