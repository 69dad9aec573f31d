package org.barreltally.sugarbush.boiling;

import org.barreltally.refusal.Refusal;

/** A volume was given without the temperature at which it was read. */
public final class VolumeWithoutTemperature extends Refusal {
  VolumeWithoutTemperature(String field) {
    super(
        Kind.INVALID,
        "volume-without-temperature",
        "A volume needs its temperature",
        "Give the temperature when the volume was read, for example {\"value\": 38, \"unit\": \"degF\"}.",
        field);
  }
}
