package org.barreltally.gifts;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.UUID;

/**
 * What there is once of a gift order.
 *
 * @param buyer kept elsewhere
 * @param depositPercent of the total, asked as deposit; null where nobody said
 * @param version counts every change
 */
public record OrderHead(
    UUID id,
    UUID buyer,
    String currency,
    BigDecimal depositPercent,
    long version,
    Instant recordedAt) {}
