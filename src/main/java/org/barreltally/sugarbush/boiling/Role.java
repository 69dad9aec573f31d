package org.barreltally.sugarbush.boiling;

/** What an amount did: into a tank, out of one, or off as syrup. */
public enum Role {
  /** Sap into a tank. */
  GATHERED,
  /** Sap out of a tank through the membrane. */
  TAKEN,
  /** Concentrate into a tank. */
  MADE,
  /** Out of a tank, or from the trees, into the pan. */
  BOILED,
  /** Syrup off the pan. */
  DRAWN;

  /** {@code gathered, taken, made, boiled, drawn}. */
  public String code() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }

  /** The role with that code; none is a defect. */
  public static Role of(String code) {
    return valueOf(code.toUpperCase(java.util.Locale.ROOT));
  }
}
