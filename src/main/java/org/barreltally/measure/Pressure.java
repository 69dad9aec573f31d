package org.barreltally.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.barreltally.refusal.InvalidField;

/**
 * A pressure of the air as a barometer reads it, {@code {"value": 986, "unit": "hPa"}}: a type of
 * its own, because nothing but air is given in its units. At most 12 significant digits.
 */
public record Pressure(BigDecimal value, PressureUnit unit) {

  /**
   * @throws InvalidField when either is missing
   * @throws TooManyDigits when the number has too many digits
   */
  public Pressure {
    if (value == null) {
      throw new InvalidField("value", "Give a number.");
    }
    if (unit == null) {
      throw new InvalidField("unit", "Give the pressure in hPa, kPa or inHg.");
    }
    if (value.precision() > TooManyDigits.MOST || Math.abs(value.scale()) > TooManyDigits.MOST) {
      throw new TooManyDigits();
    }
  }

  /** A computed pressure, hPa to one decimal. */
  public static Pressure hPa(double pascal) {
    return new Pressure(
        BigDecimal.valueOf(pascal / 100).setScale(1, RoundingMode.HALF_UP), PressureUnit.HPA);
  }

  /** The same in Pa, for the physics. */
  public double pascal() {
    return value.multiply(unit.pascal()).doubleValue();
  }

  /** For people: {@code 986 hPa}. */
  @Override
  public String toString() {
    return value.toPlainString() + " " + unit.code();
  }
}
