package org.barreltally.barrels;

import org.barreltally.measure.Quantity;

/** A vessel on the scale: full and empty, as the scale reads in air. */
public record Weighing(Quantity gross, Quantity tare) {}
