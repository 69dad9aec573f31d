package org.barreltally.sugarbush.boiling;

import java.time.LocalDate;
import java.util.UUID;

/**
 * Sap as it stands in the log.
 *
 * @param bush as its name is written where it was made known
 * @param reversed null while it counts
 */
public record SapGathered(
    UUID id,
    int season,
    LocalDate on,
    String bush,
    GatherSap said,
    Amount amount,
    Reversed reversed) {}
