package org.barreltally.shows;

import java.time.LocalDate;
import java.util.UUID;
import org.barreltally.pricing.Money;

/**
 * What was paid to an organiser, flat fee and deposit alike. Never changed.
 *
 * @param amount below zero where some of it came back
 * @param note may be null
 */
public record Payment(UUID id, LocalDate on, Money amount, String note) {}
