package org.barreltally.documents;

import java.util.Locale;
import org.barreltally.measure.Air;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Sucrose;
import org.barreltally.measure.Uncertain;
import org.barreltally.measure.Unit;
import org.barreltally.sugarbush.boiling.Amount;

/** Figures of a boil as its log shows them. */
final class BoilFigures {

  private static final double FREEZING = 32;
  private static final double F_PER_C = 1.8;
  private static final double ML_PER_GAL = Quantity.of(1, Unit.GAL).doubleIn(Unit.ML);
  private static final double G_PER_LB = Quantity.of(1, Unit.LB).doubleIn(Unit.G);

  private BoilFigures() {}

  static String one(double number) {
    return String.format(Locale.ROOT, "%.1f", number);
  }

  static String two(double number) {
    return String.format(Locale.ROOT, "%.2f", number);
  }

  static String fahrenheit(Uncertain celsius) {
    return one(celsius.value() * F_PER_C + FREEZING) + " °F";
  }

  /** A step, not a temperature. */
  static String fahrenheitStep(Uncertain celsius) {
    return one(celsius.value() * F_PER_C) + " °F";
  }

  static String inFahrenheit(Quantity temperature) {
    return Math.round(temperature.doubleIn(Unit.DEGF)) + " °F";
  }

  /** With twice its standard uncertainty. */
  static String gallons(Uncertain mL) {
    return two(gallons(mL.value())) + " ± " + two(Uncertain.COVERAGE * gallons(mL.u()));
  }

  static double gallons(double mL) {
    return mL / ML_PER_GAL;
  }

  static double pounds(double grams) {
    return grams / G_PER_LB;
  }

  /** Pounds as a scale reads. */
  static double inAir(Amount drawn) {
    double density = Sucrose.density(drawn.brix().value(), 20);
    return pounds(Air.weight(drawn.grams().value(), density));
  }
}
