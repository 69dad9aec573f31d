package org.barreltally.sugarbush.boiling.rest;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Uncertain;
import org.barreltally.measure.Unit;
import org.barreltally.sugarbush.boiling.Amount;
import org.barreltally.sugarbush.boiling.ShortTank;

/** Figures of the log as they are answered. */
public final class Amounts {

  private static final double G_PER_KG = 1000;
  private static final double C_TO_F = 1.8;
  private static final int FREEZING_F = 32;
  private static final int DECIMALS = 3;
  private static final int PER_TAP_DECIMALS = 4;

  private Amounts() {}

  /**
   * An amount; each uncertainty is a standard one.
   *
   * @param volumeAt68F gal
   * @param mass kg
   * @param brix true
   * @param sugar kg in it
   */
  public record View(
      Quantity volumeAt68F,
      Quantity volumeUncertainty,
      Quantity mass,
      Quantity massUncertainty,
      BigDecimal brix,
      BigDecimal brixUncertainty,
      Quantity sugar,
      Quantity sugarUncertainty) {

    static View of(Amount amount) {
      return new View(
          gallons(amount.mL().value()),
          gallons(amount.mL().u()),
          kilograms(amount.grams().value()),
          kilograms(amount.grams().u()),
          number(amount.brix().value(), DECIMALS),
          number(amount.brix().u(), DECIMALS),
          kilograms(amount.sugar().value()),
          kilograms(amount.sugar().u()));
    }
  }

  /** A volume in gal, with its standard uncertainty. */
  public record Volume(Quantity volumeAt68F, Quantity standardUncertainty) {
    static Volume of(Uncertain mL) {
      return new Volume(gallons(mL.value()), gallons(mL.u()));
    }
  }

  /** A mass in kg, with its standard uncertainty. */
  public record Mass(Quantity mass, Quantity standardUncertainty) {
    static Mass of(Uncertain grams) {
      return new Mass(kilograms(grams.value()), kilograms(grams.u()));
    }
  }

  /** A tank that gave more than went in. */
  public record Short(String tank, Volume missing, boolean beyondUncertainty, String words) {
    static Short of(ShortTank tank) {
      return new Short(
          tank.tank(), Volume.of(tank.missing()), tank.isBeyondDoubt(), tank.inWords());
    }
  }

  /** A difference, judged. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Difference(
      Quantity mass,
      Quantity volumeAt68F,
      BigDecimal percent,
      Quantity standardUncertainty,
      boolean significant) {}

  static Quantity gallons(double mL) {
    return Quantity.rounded(mL / Quantity.of(1, Unit.GAL).doubleIn(Unit.ML), Unit.GAL, DECIMALS);
  }

  /** Gallons at 68 °F for each tap. */
  static BigDecimal perTap(double mL, int taps) {
    return number(mL / Quantity.of(1, Unit.GAL).doubleIn(Unit.ML) / taps, PER_TAP_DECIMALS);
  }

  static Quantity kilograms(double grams) {
    return Quantity.rounded(grams / G_PER_KG, Unit.KG, DECIMALS);
  }

  static Quantity fahrenheit(double celsius) {
    return Quantity.rounded(celsius * C_TO_F + FREEZING_F, Unit.DEGF, 2);
  }

  /** A step, not a temperature. */
  static Quantity fahrenheitStep(double celsius) {
    return Quantity.rounded(celsius * C_TO_F, Unit.DEGF, 2);
  }

  static BigDecimal number(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
  }
}
