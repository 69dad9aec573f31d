package org.barreltally.barrels;

import java.util.Locale;
import org.barreltally.measure.Quantity;

/**
 * A density reading as it was taken.
 *
 * @param reading in Brix or Baumé
 * @param temperature of the syrup when it was read
 * @param reference the temperature the instrument's scale is made for; null for 68 °F
 */
public record Density(
    Quantity reading, Quantity temperature, Instrument instrument, Quantity reference) {

  /** What it was read with. */
  public enum Instrument {
    HYDROMETER,
    REFRACTOMETER;

    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
