package org.barreltally.measure;

import org.barreltally.refusal.InvalidField;

/** How much sap makes how much syrup. */
public final class Sap {
  private static final double RULE_OF_86 = 86;

  private Sap() {}

  /**
   * Volumes of sap for one volume of syrup, both at 20 °C, when no sugar is lost: sugar per volume
   * of syrup over sugar per volume of sap. Agrees within 1 percent with the University of Vermont's
   * revision of the rule of 86.
   *
   * @param sapBrix true °Brix of the sap, over 0
   * @throws InvalidField when the sap has no sugar
   * @throws OutsideDensityRange when either is not 0..70
   */
  public static double volumesPerVolume(double sapBrix, double syrupBrix) {
    checkSugar(sapBrix);
    return Sucrose.density(syrupBrix, 20) * syrupBrix / (Sucrose.density(sapBrix, 20) * sapBrix);
  }

  /** The trade's rule of thumb for the same: 86 over the °Brix of the sap. */
  public static double ruleOf86(double sapBrix) {
    checkSugar(sapBrix);
    return RULE_OF_86 / sapBrix;
  }

  private static void checkSugar(double sapBrix) {
    if (!(sapBrix > 0)) {
      throw new InvalidField("sapBrix", "Give the strength of the sap, over 0 °Bx.");
    }
  }
}
