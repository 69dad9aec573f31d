package org.barreltally.pricing;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;

/**
 * A rate of tax as the owner entered it.
 *
 * @param id null until it is entered
 * @param place a town or region, for example {@code VT} or {@code VT/Millbrook Hollow}; a town
 *     after a slash is part of the region before it
 * @param percent of the price without tax, 0 to 100; all that is due there together
 * @param from the first day; it holds until a later one begins
 * @param source where it was read; null where nobody said
 * @param enteredAt null until it is entered
 */
public record TaxRate(
    UUID id,
    ProductClass productClass,
    String place,
    BigDecimal percent,
    LocalDate from,
    String source,
    Instant enteredAt) {}
