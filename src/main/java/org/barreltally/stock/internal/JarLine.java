package org.barreltally.stock.internal;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.barreltally.barrels.Density;
import org.barreltally.containers.Container;
import org.barreltally.measure.Taste;

/**
 * Jars of one lot and size at one place, as a row of a file says it.
 *
 * @param seasons the crop years in it
 * @param density null where it was not read
 * @param transmittance %Tc
 */
public record JarLine(
    String lot,
    String place,
    Container container,
    Long count,
    List<Integer> seasons,
    LocalDate packedOn,
    Density density,
    Double transmittance,
    Taste taste) {

  /** What makes two rows the same jars. */
  public String key() {
    return lot + " " + place + " " + container.code();
  }

  /** Whether both rows say the same of the lot. */
  public boolean agreesWith(JarLine other) {
    return seasons.equals(other.seasons)
        && packedOn.equals(other.packedOn)
        && Objects.equals(density, other.density)
        && transmittance.equals(other.transmittance)
        && taste == other.taste;
  }
}
