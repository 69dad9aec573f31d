package org.barreltally.table;

import java.time.Instant;
import org.barreltally.measure.ColorClass;

/**
 * Jars left a table without being sold.
 *
 * @param at by the device's clock; null for now
 * @param lot as read from the label; null if nobody looked
 * @param grade null if it was not said; a known lot knows its grade
 * @param cause {@code broken, sampled, given}
 * @param reason in words; needed for what was given away
 */
public record TellLoss(
    Instant at,
    String container,
    String lot,
    ColorClass grade,
    Long count,
    String cause,
    String reason) {}
