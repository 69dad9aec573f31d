package org.barreltally.measure;

/**
 * Degrees Baumé of the American scale for heavy liquids: Bé = 145 − 145/SG, SG the specific gravity
 * 20/20 (modulus 145; Vermont's 36 and 37 °Bé for 66.9 and 68.9 °Bx follow it).
 */
public final class Baume {
  private static final double MODULUS = 145;

  private Baume() {}

  /**
   * °Bé of a true °Brix.
   *
   * @throws OutsideDensityRange when brix is not 0..70
   */
  public static double fromBrix(double brix) {
    return MODULUS - MODULUS / Sucrose.specificGravity2020(brix);
  }

  /**
   * True °Brix of a °Bé from 0 to about 37.58 (70 °Bx).
   *
   * @throws OutsideDensityRange beyond that
   */
  public static double toBrix(double baume) {
    return Sucrose.brixOfSpecificGravity2020(MODULUS / (MODULUS - baume));
  }
}
