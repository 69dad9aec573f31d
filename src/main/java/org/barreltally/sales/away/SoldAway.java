package org.barreltally.sales.away;

import org.barreltally.sales.Sale;

/**
 * A sale away from shows.
 *
 * @param number of its invoice or receipt
 * @param buyer null where nobody was named, or the name was removed
 */
public record SoldAway(Sale sale, PaperNumber number, SellAway.Buyer buyer) {}
