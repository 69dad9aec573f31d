package org.barreltally.sugarbush.boiling;

import org.barreltally.measure.Quantity;
import org.barreltally.refusal.Refusal;

/** Syrup off the pan is hotter than its density is known for. */
public final class TooHotForVolume extends Refusal {
  TooHotForVolume(Quantity temperature, String field) {
    super(
        Kind.RULE,
        "too-hot-for-volume",
        "Too hot to go by volume",
        "A volume at %s cannot be turned into syrup: its density is known from 32 to 212 °F. Weigh the draw-off, or read the volume once it has come below."
            .formatted(temperature),
        field);
  }
}
