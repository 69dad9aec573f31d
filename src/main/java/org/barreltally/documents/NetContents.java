package org.barreltally.documents;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.barreltally.measure.Dimension;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.settings.UnitHabit;

/**
 * How net contents are said in both unit systems, first in the owner's habit. The one the container
 * is known by is exact, the other to three significant digits, rounded down so that it never says
 * more than there is (common practice; your weights-and-measures office decides).
 */
final class NetContents {

  private static final MathContext THREE_DOWN = new MathContext(3, RoundingMode.DOWN);
  private static final BigDecimal GALLON_IN_FLOZ = BigDecimal.valueOf(128);
  private static final BigDecimal LITRE_IN_ML = BigDecimal.valueOf(1000);
  private static final int DECIMALS_MAX = 3;

  /** By fluid ounces: what people call the size. */
  private static final Map<BigDecimal, String> CALLED =
      new TreeMap<>(
          Map.of(
              BigDecimal.valueOf(8), "½ pt",
              BigDecimal.valueOf(16), "1 pt",
              BigDecimal.valueOf(32), "1 qt",
              BigDecimal.valueOf(64), "½ gal"));

  private NetContents() {}

  /** Ways to say it, the fullest first: {@code 16 fl oz (473 mL) · 1 pt, 16 fl oz (473 mL)}. */
  static List<String> ways(Quantity contents, UnitHabit habit) {
    if (contents.unit().dimension() != Dimension.VOLUME) {
      throw new IllegalArgumentException("not a volume: " + contents);
    }
    boolean metric = contents.unit() == Unit.ML || contents.unit() == Unit.L;
    String inMetric = metric(contents, !metric);
    String inCustomary = customary(contents, metric);
    if (habit == UnitHabit.METRIC) {
      return List.of(inMetric + " (" + inCustomary + ")");
    }
    String both = inCustomary + " (" + inMetric + ")";
    String called = CALLED.get(contents.in(Unit.FLOZ));
    return called == null ? List.of(both) : List.of(both + " · " + called, both);
  }

  private static String metric(Quantity contents, boolean rounded) {
    BigDecimal milliliters = contents.in(Unit.ML);
    return milliliters.compareTo(LITRE_IN_ML) < 0
        ? number(milliliters, rounded) + " mL"
        : number(contents.in(Unit.L), rounded) + " L";
  }

  private static String customary(Quantity contents, boolean rounded) {
    BigDecimal ounces = contents.in(Unit.FLOZ);
    return ounces.compareTo(GALLON_IN_FLOZ) < 0
        ? number(ounces, rounded) + " fl oz"
        : number(contents.in(Unit.GAL), rounded) + " gal";
  }

  private static String number(BigDecimal value, boolean rounded) {
    BigDecimal shown =
        rounded ? value.round(THREE_DOWN) : value.setScale(DECIMALS_MAX, RoundingMode.DOWN);
    return shown.stripTrailingZeros().toPlainString();
  }
}
