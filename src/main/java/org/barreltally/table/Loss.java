package org.barreltally.table;

import java.time.Instant;
import java.util.UUID;
import org.barreltally.measure.ColorClass;

/**
 * Jars that left a table without being sold, as the book has them.
 *
 * @param id of the movement
 * @param at when by the book
 * @param lot null where it is not known
 */
public record Loss(
    UUID id,
    UUID show,
    Instant at,
    String container,
    String lot,
    ColorClass grade,
    long count,
    String cause) {}
