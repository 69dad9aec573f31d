package org.barreltally.closing;

import java.time.Instant;

/**
 * A year of the book.
 *
 * @param state {@code open, closed}
 * @param closedAt null while it is open
 * @param movements booked in it
 * @param late of those, how many happened in a year that was closed by then
 */
public record Year(int year, String state, Instant closedAt, long movements, long late) {}
