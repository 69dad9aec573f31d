package org.barreltally.sugarbush.boiling.rest;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Uncertain;
import org.barreltally.sugarbush.boiling.ExpectedSyrup;

/**
 * Syrup to be expected of the sugar fed, beside the trade's rules and what was drawn.
 *
 * @param brix of the syrup
 * @param brixFrom {@code draw-offs} or {@code target}
 * @param bySugar if no sugar is lost
 * @param byRuleOf86 86 over the Brix fed
 * @param byRevisedRule numerator over the Brix fed, less 0.32
 * @param drawn left out before the first draw-off
 * @param difference drawn less expected by sugar; left out before the first draw-off or feed
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record ExpectedView(
    BigDecimal brix,
    String brixFrom,
    Amounts.Mass sugarFed,
    Syrup bySugar,
    Amounts.Volume byRuleOf86,
    Revised byRevisedRule,
    Syrup drawn,
    Amounts.Difference difference) {

  /** Syrup in kg, and in gal at 68 °F; each uncertainty is a standard one. */
  public record Syrup(
      Quantity mass, Quantity massUncertainty, Quantity volumeAt68F, Quantity volumeUncertainty) {

    static Syrup of(Uncertain grams, Uncertain mL) {
      return new Syrup(
          Amounts.kilograms(grams.value()),
          Amounts.kilograms(grams.u()),
          Amounts.gallons(mL.value()),
          Amounts.gallons(mL.u()));
    }
  }

  /**
   * The revised rule.
   *
   * @param numerator that applies for that Brix
   * @param source whose figures
   */
  public record Revised(
      Quantity volumeAt68F, Quantity standardUncertainty, BigDecimal numerator, String source) {}

  private static final String SOURCE =
      "Perkins and Isselhardt, University of Vermont Proctor Maple Research Center: 87.1 for 66.0 °Bx, 88.2 for"
          + " 66.9; a straight line between, the nearer one beyond";

  static ExpectedView of(ExpectedSyrup expected) {
    ExpectedSyrup.Drawn drawn = expected.drawn();
    return new ExpectedView(
        Amounts.number(expected.brix().value(), 2),
        expected.byDrawOffs() ? "draw-offs" : "target",
        Amounts.Mass.of(expected.sugar()),
        Syrup.of(expected.grams(), expected.mL()),
        Amounts.Volume.of(expected.mLBy86()),
        new Revised(
            Amounts.gallons(expected.mLRevised().value()),
            Amounts.gallons(expected.mLRevised().u()),
            Amounts.number(expected.numerator(), 2),
            SOURCE),
        drawn == null ? null : Syrup.of(drawn.grams(), drawn.mL()),
        drawn == null || expected.sugar().value() == 0 ? null : difference(expected, drawn));
  }

  private static Amounts.Difference difference(ExpectedSyrup expected, ExpectedSyrup.Drawn drawn) {
    return new Amounts.Difference(
        Amounts.kilograms(drawn.difference().value()),
        Amounts.gallons(drawn.differenceML().value()),
        Amounts.number(100 * drawn.difference().value() / expected.grams().value(), 2),
        Amounts.kilograms(drawn.difference().u()),
        drawn.isBeyondDoubt());
  }
}
