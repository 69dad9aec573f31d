package org.barreltally.shows;

import java.time.Instant;

/**
 * A show came into a state.
 *
 * @param reason may be null
 */
public record Step(ShowState state, Instant at, String reason) {}
