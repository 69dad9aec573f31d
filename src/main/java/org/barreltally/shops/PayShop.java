package org.barreltally.shops;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.barreltally.pricing.Money;

/**
 * A shop paid, or was paid back where the amount is below zero.
 *
 * @param on null for today
 */
public record PayShop(
    LocalDate on,
    @NotNull(message = "Give the amount.") Money amount,
    @Size(max = 200, message = "Keep it within 200 characters.") String note) {}
