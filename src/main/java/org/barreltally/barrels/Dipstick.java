package org.barreltally.barrels;

import org.barreltally.measure.Quantity;

/**
 * A volume read off a dipstick or mark, with the temperature of the syrup, without which it means
 * little.
 */
public record Dipstick(Quantity volume, Quantity temperature) {}
