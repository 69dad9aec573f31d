package org.barreltally.gifts;

import java.util.List;

/**
 * A postal address.
 *
 * @param lines street, house, flat, post box: what stands between name and town, at least one
 * @param region state, province or county; null where the country has none in its addresses
 * @param postcode null where the country has none
 * @param country two letters of ISO 3166-1
 */
public record Address(
    List<String> lines, String town, String region, String postcode, String country) {}
