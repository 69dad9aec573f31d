package org.barreltally.sugarbush.boiling;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * A membrane takes water out of sap.
 *
 * @param season null for the year of the day
 * @param sap what went in
 * @param concentrate what came out
 * @param permeateBrix of the water taken out; null if it was not read
 */
public record MakeConcentrate(
    LocalDate on,
    Integer season,
    Gauged sap,
    Gauged concentrate,
    BigDecimal permeateBrix,
    String note) {}
