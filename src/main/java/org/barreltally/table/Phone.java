package org.barreltally.table;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;

/**
 * A phone that was paired.
 *
 * @param cutOffAt when its token was ended; null while it may ask
 * @param usedOn the last day its token was seen; null if it never was
 */
public record Phone(UUID id, String name, Instant pairedAt, Instant cutOffAt, LocalDate usedOn) {}
