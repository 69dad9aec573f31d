package org.barreltally.people;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;

/**
 * What is known of a token, without its secret.
 *
 * @param expiresOn last day it may be used, or null if it does not expire
 * @param usedOn last day it was seen, or null if it never was
 */
public record AccessToken(
    UUID id, String name, Instant createdAt, LocalDate expiresOn, LocalDate usedOn) {}
