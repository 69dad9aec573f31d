package org.barreltally.table;

import java.time.Instant;

/**
 * What a phone shows to be paired.
 *
 * @param code 100 random bits in letters and digits that can be read out
 * @param expiresAt from when on it is worth nothing
 */
public record Pairing(String name, String code, Instant expiresAt) {}
