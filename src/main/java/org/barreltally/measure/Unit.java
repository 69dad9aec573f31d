package org.barreltally.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import org.barreltally.refusal.InvalidField;

/**
 * The units a quantity may be given in. Codes are case-sensitive.
 *
 * <p>Factors are exact. Source: NIST Special Publication 811, appendix B, and NIST Handbook 44,
 * appendix C: the pound is 453.59237 g, the ounce a sixteenth of it; the US gallon is 231 cubic
 * inches (3785.411784 mL), the quart a quarter, the pint an eighth, the fluid ounce a 128th of it.
 */
public enum Unit {
  LB("lb", Dimension.MASS, "453.59237"),
  OZ("oz", Dimension.MASS, "28.349523125"),
  KG("kg", Dimension.MASS, "1000"),
  G("g", Dimension.MASS, "1"),
  GAL("gal", Dimension.VOLUME, "3785.411784"),
  QT("qt", Dimension.VOLUME, "946.352946"),
  PT("pt", Dimension.VOLUME, "473.176473"),
  FLOZ("floz", Dimension.VOLUME, "29.5735295625"),
  L("L", Dimension.VOLUME, "1000"),
  ML("mL", Dimension.VOLUME, "1"),
  DEGF("degF", Dimension.TEMPERATURE, "1"),
  DEGC("degC", Dimension.TEMPERATURE, "1"),
  BRIX("Brix", Dimension.SUGAR, "1"),
  BAUME("Baume", Dimension.SUGAR, "1");

  private static final BigDecimal FREEZING_F = BigDecimal.valueOf(32);
  private static final BigDecimal FIVE = BigDecimal.valueOf(5);
  private static final BigDecimal NINE = BigDecimal.valueOf(9);

  private final String code;
  private final Dimension dimension;
  private final BigDecimal factor;

  Unit(String code, Dimension dimension, String factor) {
    this.code = code;
    this.dimension = dimension;
    this.factor = new BigDecimal(factor);
  }

  public String code() {
    return code;
  }

  public Dimension dimension() {
    return dimension;
  }

  /** The codes of all units, in the order they are offered. */
  public static List<String> codes() {
    return Arrays.stream(values()).map(Unit::code).toList();
  }

  /**
   * The unit of a code such as {@code lb} or {@code mL}.
   *
   * @throws UnknownUnit when no unit has that code
   * @throws InvalidField when there is none
   */
  public static Unit of(String code) {
    if (code == null) {
      throw new InvalidField("unit", "Say the unit: one of " + String.join(", ", codes()) + ".");
    }
    for (Unit unit : values()) {
      if (unit.code.equals(code)) {
        return unit;
      }
    }
    throw new UnknownUnit(code);
  }

  /**
   * A value of this unit in another: exact where the decimal ends within 34 digits.
   *
   * @throws UnitMismatch when the units measure different things, or are different sugar scales
   */
  BigDecimal convert(BigDecimal value, Unit to) {
    if (this == to) {
      return value;
    }
    if (dimension != to.dimension || dimension == Dimension.SUGAR) {
      throw new UnitMismatch(this, to);
    }
    if (dimension == Dimension.TEMPERATURE) {
      return to == DEGC
          ? value.subtract(FREEZING_F).multiply(FIVE).divide(NINE, MathContext.DECIMAL128)
          : value.multiply(NINE).divide(FIVE, MathContext.DECIMAL128).add(FREEZING_F);
    }
    return value.multiply(factor).divide(to.factor, MathContext.DECIMAL128);
  }

  /**
   * A difference of this unit in another: as a value, but a step of 9 °F is one of 5 °C.
   *
   * @throws UnitMismatch as for values
   */
  double convertDifference(double difference, Unit to) {
    BigDecimal zero = convert(BigDecimal.ZERO, to);
    return convert(BigDecimal.valueOf(difference), to).subtract(zero).doubleValue();
  }
}
