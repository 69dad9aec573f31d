package org.barreltally.shops;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;

/**
 * Terms are agreed with a shop.
 *
 * @param validFrom the first day; null for today
 * @param missing null for {@code shop}
 * @param shopBearsPercent only where it is split; null for half
 * @param priceList null for the retail list that holds on the day of a count
 */
public record AgreeTerms(
    LocalDate validFrom,
    BigDecimal commissionPercent,
    MissingRule missing,
    BigDecimal shopBearsPercent,
    UUID priceList) {}
