package org.barreltally.table;

import java.time.Instant;
import java.util.UUID;

/**
 * Somebody at a table would like gift boxes.
 *
 * @param id made by the device; a repeat under it changes nothing
 * @param at by the device's clock
 * @param phone how to reach them
 * @param wish which boxes, in their words; may be null
 */
public record TellLead(UUID id, Instant at, String name, String phone, String wish) {}
