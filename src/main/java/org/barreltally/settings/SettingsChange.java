package org.barreltally.settings;

import java.time.Instant;
import java.util.List;
import org.barreltally.measure.Quantity;

/**
 * What changes of the settings; null where nothing does. An empty {@code publicAddress} or {@code
 * labelSheet} and a {@code bestByMonths} of 0 take them away.
 *
 * @param maker at most 100 characters
 * @param address 1 to 6 lines of at most 60 characters
 * @param timeZone by its name in the IANA time zone database
 * @param currency code of ISO 4217
 * @param jurisdiction code of {@link org.barreltally.measure.Jurisdiction}
 * @param cappingTemperature 140 to 212 °F
 * @param labelSheet code of the sheet that labels are printed on
 * @param publicAddress an http or https address of at most 200 characters
 * @param bestByMonths 0 to 120
 * @param validFrom from when; not in the past, null for now
 */
public record SettingsChange(
    String maker,
    List<String> address,
    String timeZone,
    String currency,
    UnitHabit unitHabit,
    String jurisdiction,
    NetContentsRegime netContentsRegime,
    InstrumentWidths instruments,
    Quantity cappingTemperature,
    String labelSheet,
    String publicAddress,
    Integer bestByMonths,
    SupplyShortage suppliesRule,
    SugarhouseSettings sugarhouse,
    Instant validFrom) {}
