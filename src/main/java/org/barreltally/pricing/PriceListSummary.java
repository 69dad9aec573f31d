package org.barreltally.pricing;

import java.time.LocalDate;
import java.util.UUID;

/**
 * A price list in a list of them.
 *
 * @param validTo the last day; null while it is open
 * @param lines how many prices
 * @param deals how many deals
 * @param replacedBy its next version; null while it is the newest
 * @param withdrawnFrom the first day on which it no longer holds; null unless it was withdrawn
 */
public record PriceListSummary(
    UUID id,
    String name,
    Audience audience,
    LocalDate validFrom,
    LocalDate validTo,
    String currency,
    int version,
    UUID replaces,
    UUID replacedBy,
    LocalDate withdrawnFrom,
    int lines,
    int deals) {}
