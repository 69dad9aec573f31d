package org.barreltally.sales;

import java.time.Instant;
import java.util.UUID;

/**
 * A sale id that came again with other content.
 *
 * @param sale the id, under which the first telling counts
 * @param said the other telling, as JSON
 */
public record Conflict(UUID id, UUID sale, String place, String said, Instant recordedAt) {}
