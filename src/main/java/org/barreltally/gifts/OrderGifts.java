package org.barreltally.gifts;

import java.math.BigDecimal;
import java.util.List;
import org.barreltally.pricing.Money;

/**
 * A gift order as it is told.
 *
 * @param deposit paid with the order; none if null
 * @param depositPercent of the total, asked as deposit; null where nobody said
 */
public record OrderGifts(
    Buyer buyer, List<Recipient> recipients, Money deposit, BigDecimal depositPercent) {}
