package org.barreltally.barrels;

import org.barreltally.refusal.Refusal;

/** A volume was given without the temperature of the syrup. */
public final class VolumeWithoutTemperature extends Refusal {
  public VolumeWithoutTemperature(String field) {
    super(
        Kind.INVALID,
        "volume-without-temperature",
        "A volume needs its temperature",
        "Give the temperature of the syrup when the volume was read: 100 gal at 185 °F are about 97.1 gal at 68 °F.",
        field);
  }
}
