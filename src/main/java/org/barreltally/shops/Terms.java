package org.barreltally.shops;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;

/**
 * What was agreed with a shop from a day on.
 *
 * @param commissionPercent what the shop keeps of each price, 0 to under 100
 * @param shopBearsPercent how much of what is missing or broken the shop pays: 100 where it bears
 *     it, 0 where the maker does, the agreed part where it is split
 * @param priceList whose prices count; null for the retail list that holds on the day
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Terms(
    UUID id,
    LocalDate validFrom,
    BigDecimal commissionPercent,
    MissingRule missing,
    BigDecimal shopBearsPercent,
    UUID priceList) {}
