package org.barreltally.sales;

import java.util.List;
import java.util.UUID;
import org.barreltally.pricing.Money;

/**
 * What a sale costs.
 *
 * @param list that was used; null if none holds
 * @param each per line; null where it is not known
 * @param amounts per line; null where it is not known
 * @param total with tax; null if a price is not known
 */
record Price(
    UUID list, List<Money> each, List<Money> amounts, Money saved, Money tax, Money total) {}
