package org.barreltally.measure;

import org.barreltally.refusal.Refusal;

/** A pressure that the air has nowhere where sap is boiled. */
public final class OutsidePressureRange extends Refusal {

  /** Some 4,000 m above the sea. */
  private static final double PASCAL_MIN = 60_000;

  /** The highest at sea level on record is 1,084 hPa (from memory). */
  private static final double PASCAL_MAX = 110_000;

  private OutsidePressureRange(Pressure said, String field) {
    super(
        Kind.RULE,
        "outside-pressure-range",
        "That is no pressure of the air",
        "%s is outside 600 to 1,100 hPa (60 to 110 kPa, 17.7 to 32.5 inHg). Check number and unit; give the pressure at the sugarhouse, not what a gauge shows above it."
            .formatted(said),
        field);
  }

  /**
   * The pressure, if the air can have it.
   *
   * @throws OutsidePressureRange if not
   */
  public static Pressure check(Pressure said, String field) {
    if (said.pascal() < PASCAL_MIN || said.pascal() > PASCAL_MAX) {
      throw new OutsidePressureRange(said, field);
    }
    return said;
  }
}
