package org.barreltally.canning;

import org.barreltally.measure.Quantity;
import org.barreltally.refusal.Refusal;

/** Jars were filled cooler than the farm's capping temperature, and nobody released them. */
public final class BelowCappingTemperature extends Refusal {
  public BelowCappingTemperature(Quantity filled, Quantity least) {
    super(
        Kind.RULE,
        "below-capping-temperature",
        "Too cool to cap",
        say(filled, least),
        "fillTemperature");
  }

  static String say(Quantity filled, Quantity least) {
    return "The syrup is %s at filling; jars are capped at %s or above so that they do not spoil. Reheat it (it scalds: gloves, apron, closed shoes), or release the run with a releaseReason."
        .formatted(filled, least);
  }
}
