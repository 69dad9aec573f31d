package org.barreltally.sugarbush.boiling;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.Locale;
import org.barreltally.measure.Quantity;

/**
 * Syrup is drawn off the pan.
 *
 * @param volume with the temperature, or weight; with both, weight counts
 * @param temperature of the syrup when its volume was read
 * @param weight net, as a scale reads in air
 * @param barrel the tag of the barrel it went to; null when it went hot into jars or elsewhere
 * @param hotIntoJars whether it was packed at once
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record DrawOff(
    Instant at,
    Quantity volume,
    Quantity temperature,
    Quantity weight,
    Reading density,
    String barrel,
    Boolean hotIntoJars,
    String note) {

  /**
   * A density reading as it was taken.
   *
   * @param reading in Brix, or on a hydrometer in Baumé
   * @param reference the temperature the scale is made for; null for 68 °F
   */
  public record Reading(
      Quantity reading, Quantity temperature, Instrument instrument, Quantity reference) {}

  /** What a density is read with. */
  public enum Instrument {
    HYDROMETER,
    REFRACTOMETER;

    /** {@code hydrometer, refractometer}. */
    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
