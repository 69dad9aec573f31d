package org.barreltally.gifts;

import java.time.LocalDate;
import java.util.UUID;
import org.barreltally.measure.ColorClass;

/**
 * Jars the owner means to can.
 *
 * @param id null before it is kept
 */
public record PlannedCanning(
    UUID id, LocalDate on, String container, ColorClass grade, Long count) {}
