package org.barreltally.sugarbush.boiling;

import java.math.BigDecimal;
import org.barreltally.measure.Quantity;

/**
 * What goes into the pan.
 *
 * @param of sap or concentrate
 * @param tank it comes from; null when it comes from a bush without one
 * @param bush whose sap it is; may be null with a tank
 */
public record Feed(
    Of of, String tank, String bush, Quantity volume, Quantity temperature, BigDecimal brix) {

  /** What is fed. */
  public enum Of {
    SAP,
    CONCENTRATE;

    /** {@code sap, concentrate}. */
    public String code() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }
}
