package org.barreltally.watch;

import java.time.Instant;
import java.util.UUID;
import org.barreltally.measure.Quantity;

/** What the thermometer in a storeroom said. Never changed. */
public record StoreroomTemperature(UUID id, String place, Instant at, Quantity temperature) {}
