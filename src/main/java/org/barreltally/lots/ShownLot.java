package org.barreltally.lots;

import java.time.LocalDate;
import java.util.List;

/**
 * What a lot tells whoever scans a jar of it.
 *
 * @param boiled the days its syrup was boiled, as far as they are known
 * @param bushes whose sap was gathered by then in its seasons, as the log names them
 * @param awards the newest first
 */
public record ShownLot(
    Lot lot, List<LocalDate> boiled, List<String> bushes, List<LotAward> awards) {}
