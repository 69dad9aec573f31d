package org.barreltally.measure;

import org.barreltally.refusal.InvalidField;

/** How much sap makes how much syrup. */
public final class Sap {
  private static final double RULE_OF_86 = 86;

  // The revision of the rule: numerators for syrup of these °Brix, and what is taken off.
  private static final double LIGHT_BRIX = 66.0;
  private static final double LIGHT_NUMERATOR = 87.1;
  private static final double HEAVY_BRIX = 66.9;
  private static final double HEAVY_NUMERATOR = 88.2;
  private static final double TAKEN_OFF = 0.32;

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

  /**
   * The revised rule of thumb: numerator / X − 0.32, X the °Brix of the sap. Source: Perkins and
   * Isselhardt, University of Vermont Proctor Maple Research Center, as reported by farm press and
   * a maker.
   *
   * @param syrupBrix see {@link #revisedNumerator}
   */
  public static double revisedRule(double sapBrix, double syrupBrix) {
    checkSugar(sapBrix);
    return revisedNumerator(syrupBrix) / sapBrix - TAKEN_OFF;
  }

  /**
   * Its numerator: 87.1 for syrup of 66.0 °Bx and 88.2 for 66.9, as published; a straight line
   * between (our own), and the nearer one below and above.
   */
  public static double revisedNumerator(double syrupBrix) {
    double share = (syrupBrix - LIGHT_BRIX) / (HEAVY_BRIX - LIGHT_BRIX);
    double within = Math.max(0, Math.min(1, share));
    return LIGHT_NUMERATOR + within * (HEAVY_NUMERATOR - LIGHT_NUMERATOR);
  }

  private static void checkSugar(double sapBrix) {
    if (!(sapBrix > 0)) {
      throw new InvalidField("sapBrix", "Give the strength of the sap, over 0 °Bx.");
    }
  }
}
