package org.barreltally.measure;

import org.barreltally.refusal.InvalidField;

/** The maker's instruments and the unit in which their readings go on into the physics. */
public enum InstrumentKind {
  /** Barrels; grams as the scale shows them in air. */
  PLATFORM_SCALE(Unit.G),
  /** Barrels by volume; an estimate beside the scale. */
  DIPSTICK(Unit.ML),
  /** Jars; grams as the scale shows them in air. */
  BENCH_SCALE(Unit.G),
  HYDROMETER(Unit.BRIX),
  REFRACTOMETER(Unit.BRIX),
  PROBE(Unit.DEGC),
  /** Reads percent of light, which is a plain number. */
  COLOR_METER(null);

  private final Unit base;

  InstrumentKind(Unit base) {
    this.base = base;
  }

  /** {@code platform-scale, dipstick, …}. */
  public String code() {
    return Codes.of(this);
  }

  /** The unit of its readings inside; null for the color meter. */
  public Unit base() {
    return base;
  }

  /**
   * @throws InvalidField when no instrument has that code
   */
  public static InstrumentKind of(String code) {
    return Codes.find(InstrumentKind.class, code, "instrument");
  }
}
