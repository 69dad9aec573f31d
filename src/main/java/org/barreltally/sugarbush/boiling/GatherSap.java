package org.barreltally.sugarbush.boiling;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.barreltally.measure.Quantity;

/**
 * Sap is gathered.
 *
 * @param season null for the year of the day
 * @param bush of a lease of that season, or one's own
 * @param volume on the tank's gauge
 * @param temperature of the sap when the gauge was read
 * @param brix of the sap, plain
 * @param tank or tote it went to
 * @param note may be null
 */
public record GatherSap(
    LocalDate on,
    Integer season,
    String bush,
    Quantity volume,
    Quantity temperature,
    BigDecimal brix,
    String tank,
    String note) {}
