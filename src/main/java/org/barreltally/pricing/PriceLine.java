package org.barreltally.pricing;

import org.barreltally.measure.ColorClass;

/**
 * What one jar costs.
 *
 * @param container code of the size
 * @param grade null for every grade that has no line of its own
 * @param price of one jar, 0 or more
 * @param productClass for tax
 */
public record PriceLine(
    String container, ColorClass grade, Money price, ProductClass productClass) {}
