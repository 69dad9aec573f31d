package org.barreltally.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.barreltally.refusal.InvalidField;

/**
 * A decimal number and its unit, as typed: {@code 486.5 lb}. At most 12 significant digits, and at
 * most 12 before or after the decimal point. Equal when unit and number are, however many zeros end
 * the number. May be negative: a temperature or a difference can be.
 */
public record Quantity(BigDecimal value, Unit unit) {

  private static final int LONGEST_TEXT = 40;

  public Quantity {
    if (value == null) {
      throw new InvalidField("value", "Give a number.");
    }
    if (unit == null) {
      throw new InvalidField(
          "unit", "Say the unit: one of " + String.join(", ", Unit.codes()) + ".");
    }
    if (tooLong(value)) {
      throw new TooManyDigits();
    }
    if (value.scale() < 0) {
      value = value.setScale(0);
    }
  }

  private static boolean tooLong(BigDecimal value) {
    long whole = (long) value.precision() - value.scale();
    return value.precision() > TooManyDigits.MOST
        || value.scale() > TooManyDigits.MOST
        || whole > TooManyDigits.MOST;
  }

  /**
   * The quantity of a number written as text, with a decimal point.
   *
   * @throws InvalidField when the text is missing or no number
   * @throws TooManyDigits when it has too many digits
   */
  public static Quantity of(String value, Unit unit) {
    if (value == null || value.isBlank()) {
      throw new InvalidField("value", "Give a number.");
    }
    if (value.length() > LONGEST_TEXT) {
      throw new TooManyDigits();
    }
    try {
      return new Quantity(new BigDecimal(value.strip()), unit);
    } catch (NumberFormatException e) {
      throw new InvalidField("value", "\"" + value + "\" is no number. Write it as 66.9.");
    }
  }

  public static Quantity of(long value, Unit unit) {
    return new Quantity(BigDecimal.valueOf(value), unit);
  }

  public static Quantity of(BigDecimal value, Unit unit) {
    return new Quantity(value, unit);
  }

  /**
   * A computed value, rounded half up to the given number of decimals, or to as many as leave it at
   * most 12 digits: nobody typed it who could give fewer. Must be finite.
   */
  public static Quantity rounded(double value, Unit unit, int decimals) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("not a finite number: " + value);
    }
    BigDecimal exact = BigDecimal.valueOf(value);
    BigDecimal rounded = round(exact, decimals);
    while (tooLong(rounded) && rounded.scale() > 0) {
      rounded = round(exact, rounded.scale() - 1);
    }
    return new Quantity(rounded, unit);
  }

  /**
   * The number in another unit of the same dimension: exact where the decimal ends within 34
   * digits, else rounded to 34.
   *
   * @throws UnitMismatch when the dimension differs, or between °Bé and °Bx (see {@link Baume})
   */
  public BigDecimal in(Unit other) {
    return unit.convert(value, other);
  }

  /** As {@link #in}, for the physics. */
  public double doubleIn(Unit other) {
    return in(other).doubleValue();
  }

  /**
   * This quantity in another unit, rounded half up to the given number of decimals.
   *
   * @throws UnitMismatch as for {@link #in}
   */
  public Quantity to(Unit other, int decimals) {
    return new Quantity(round(in(other), decimals), other);
  }

  /** -1, 0 or 1 as the number is negative, zero or positive. */
  public int signum() {
    return value.signum();
  }

  private static BigDecimal round(BigDecimal value, int decimals) {
    if (decimals < 0) {
      throw new IllegalArgumentException("decimals: " + decimals);
    }
    return value.setScale(decimals, RoundingMode.HALF_UP);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Quantity q && unit == q.unit && value.compareTo(q.value) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * value.stripTrailingZeros().hashCode() + unit.hashCode();
  }

  /** For people and logs: {@code 486.5 lb}. */
  @Override
  public String toString() {
    return value.toPlainString() + " " + unit.code();
  }
}
