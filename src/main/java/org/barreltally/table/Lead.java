package org.barreltally.table;

import java.time.Instant;
import java.util.UUID;

/**
 * Somebody who would like gift boxes and waits for a call.
 *
 * @param at by the device's clock
 */
public record Lead(UUID id, UUID show, Instant at, String name, String phone, String wish) {}
