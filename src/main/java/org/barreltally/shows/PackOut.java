package org.barreltally.shows;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.Instant;
import java.util.List;
import org.barreltally.pricing.Money;

/**
 * Jars are packed out to a show's table.
 *
 * @param cashFloat change money that goes along; null for none
 * @param from the room they leave; null for the cool room
 * @param at when; null for now
 * @param note may be null
 */
public record PackOut(
    List<JarLine> lines,
    @JsonProperty("float") Money cashFloat,
    String from,
    Instant at,
    String note) {}
