package org.barreltally.documents.season;

import java.time.Instant;

/**
 * The year a book is made of.
 *
 * @param closedAt null while it is open
 * @param asOf what was known then counts: the closing, or now while it is open
 * @param from when it begins on the farm
 * @param until when the next begins
 */
public record BookYear(int year, Instant closedAt, Instant asOf, Instant from, Instant until) {}
