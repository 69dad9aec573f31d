package org.barreltally.measure;

/** Mass as it is stored: whole grams. */
public final class Grams {
  private static final double MOST = 1e15;

  private Grams() {}

  /** Computed grams as whole grams, half up. Not finite or beyond 10¹⁵ g is a defect. */
  public static long rounded(double grams) {
    if (!(Math.abs(grams) <= MOST)) {
      throw new IllegalArgumentException("not a mass: " + grams);
    }
    return Math.round(grams);
  }
}
