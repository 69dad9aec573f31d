package org.barreltally.people;

import java.time.Instant;
import java.util.UUID;

/**
 * Somebody of the sugarhouse, signed in or not.
 *
 * @param leftAt since when they no longer sign in; null while they do
 * @param codes whether a code is asked for beside their password
 */
public record Member(
    UUID id,
    String name,
    String displayName,
    Role role,
    Instant joinedAt,
    Instant leftAt,
    boolean codes) {}
