package org.barreltally.shops;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.util.UUID;
import org.barreltally.pricing.Money;

/** Money that a shop paid; below zero where it was paid back. */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Paid(UUID id, String shop, LocalDate on, Money amount, String note) {}
