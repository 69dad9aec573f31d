package org.barreltally.barrels;

import java.time.LocalDate;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Taste;

/**
 * What is said of a barrel that was filled.
 *
 * @param season the crop year of the syrup
 * @param capacity what the vessel takes to the brim; may be null
 * @param weighing or {@code dipstick}, or both: then the weight counts
 * @param transmittance %Tc; null until measured, and the barrel is held until it is
 * @param taste null until tasted, likewise
 */
public record FillBarrel(
    String tag,
    Integer season,
    LocalDate filledOn,
    Material material,
    Quantity capacity,
    Weighing weighing,
    Dipstick dipstick,
    Density density,
    Double transmittance,
    Taste taste) {}
