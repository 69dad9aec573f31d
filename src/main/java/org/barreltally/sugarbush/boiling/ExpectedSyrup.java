package org.barreltally.sugarbush.boiling;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.function.Function;
import org.barreltally.measure.Sap;
import org.barreltally.measure.Syrup;
import org.barreltally.measure.Uncertain;

/**
 * Syrup to be expected of what was fed, if no sugar is lost, beside the trade's rules of thumb and
 * what was drawn off. Standard uncertainties by GUM quadrature; readings are taken as not
 * correlated, so a gauge that is always off the same way is not averaged out by this.
 *
 * @param brix of the syrup: by mass over the draw-offs, or the target before there is one
 * @param byDrawOffs whether it is theirs
 * @param sugar fed, grams
 * @param grams of syrup of that Brix
 * @param mL of it at 68 °F
 * @param mLBy86 by 86 over the Brix fed
 * @param mLRevised by the revision of that rule
 * @param numerator of the revision, for that Brix
 * @param drawn what was drawn off; null before there is a draw-off
 */
public record ExpectedSyrup(
    Uncertain brix,
    boolean byDrawOffs,
    Uncertain sugar,
    Uncertain grams,
    Uncertain mL,
    Uncertain mLBy86,
    Uncertain mLRevised,
    double numerator,
    Drawn drawn) {

  private static final Uncertain NONE = Uncertain.exact(0);

  /**
   * What was drawn off.
   *
   * @param difference drawn less expected, grams; judged against both uncertainties
   * @param differenceML the same at 68 °F
   */
  public record Drawn(
      Uncertain grams,
      Uncertain mL,
      Uncertain sugar,
      Uncertain difference,
      Uncertain differenceML) {

    /** Whether it differs by more than twice its standard uncertainty. */
    public boolean isBeyondDoubt() {
      return difference.differsFrom(NONE);
    }
  }

  static ExpectedSyrup of(List<Amount> fed, List<Amount> drawn, double target) {
    Uncertain brix = drawn.isEmpty() ? Uncertain.exact(target) : mean(drawn);
    Uncertain sugar = sum(fed, Amount::sugar);
    Uncertain grams = sugar.dividedBy(brix.times(1.0 / 100));
    double perML = perML(brix.value());
    return new ExpectedSyrup(
        brix,
        !drawn.isEmpty(),
        sugar,
        grams,
        grams.times(perML),
        byRule(fed, (mL, x) -> mL / Sap.ruleOf86(x)),
        byRule(fed, (mL, x) -> mL / Sap.revisedRule(x, brix.value())),
        Sap.revisedNumerator(brix.value()),
        drawn.isEmpty() ? null : drawn(drawn, grams, perML));
  }

  private static Drawn drawn(List<Amount> drawn, Uncertain expected, double perML) {
    Uncertain grams = sum(drawn, Amount::grams);
    Uncertain difference = grams.minus(expected);
    return new Drawn(
        grams,
        sum(drawn, Amount::mL),
        sum(drawn, Amount::sugar),
        difference,
        difference.times(perML));
  }

  /** By mass; the weights' own doubt hardly moves it and is left out. */
  static Uncertain mean(List<Amount> amounts) {
    double grams = sum(amounts, Amount::grams).value();
    return sum(amounts, a -> a.brix().times(a.grams().value() / grams));
  }

  private static double perML(double brix) {
    return new Syrup(brix).mLAt20(1);
  }

  private static Uncertain byRule(List<Amount> fed, DoubleBinaryOperator rule) {
    return sum(fed, a -> Uncertain.through(rule, a.mL(), a.brix()));
  }

  static <T> Uncertain sum(List<T> parts, Function<T, Uncertain> part) {
    return parts.stream().map(part).reduce(NONE, Uncertain::plus);
  }
}
