package org.barreltally.sugarbush.boiling;

import java.math.BigDecimal;
import org.barreltally.measure.Quantity;

/** What was read of a tank: its volume with the temperature, and the Brix. */
public record Gauged(String tank, Quantity volume, Quantity temperature, BigDecimal brix) {}
