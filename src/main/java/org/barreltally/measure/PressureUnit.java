package org.barreltally.measure;

import java.math.BigDecimal;
import org.barreltally.refusal.InvalidField;

/**
 * The units in which barometers read. Source of the inch of mercury: NIST Special Publication 811,
 * appendix B (conventional, 3386.389 Pa).
 */
public enum PressureUnit {
  HPA("hPa", "100"),
  KPA("kPa", "1000"),
  INHG("inHg", "3386.389");

  private final String code;
  private final BigDecimal pascal;

  PressureUnit(String code, String pascal) {
    this.code = code;
    this.pascal = new BigDecimal(pascal);
  }

  /** {@code hPa, kPa, inHg}. */
  public String code() {
    return code;
  }

  /** Pascal in one of it. */
  BigDecimal pascal() {
    return pascal;
  }

  /**
   * The unit of a code.
   *
   * @throws InvalidField when there is none
   */
  public static PressureUnit of(String code) {
    for (PressureUnit unit : values()) {
      if (unit.code.equals(code)) {
        return unit;
      }
    }
    throw new InvalidField("unit", "Give the pressure in hPa, kPa or inHg.");
  }
}
