package org.barreltally.settings;

import java.util.List;
import org.barreltally.measure.Jurisdiction;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;

/**
 * All settings as they hold at one instant, as the owner says them; the ranges stand at {@link
 * SettingsChange}.
 *
 * @param labelSheet null until the owner chooses one
 * @param publicAddress null where there is none
 * @param bestByMonths null where labels carry no best-by date
 */
public record MakerSettings(
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
    SugarhouseSettings sugarhouse) {

  /**
   * What a fresh installation knows. Packing guides ask for 180 °F or more at capping (Ontario
   * packing guide D.6); local rules decide.
   */
  static final MakerSettings FRESH =
      new MakerSettings(
          "Your sugarhouse",
          List.of("Set your name and address in settings"),
          "UTC",
          "USD",
          UnitHabit.US,
          Jurisdiction.DEFAULT,
          NetContentsRegime.US,
          InstrumentWidths.usual(),
          Quantity.of(180, Unit.DEGF),
          null,
          null,
          null,
          SupplyShortage.WARN,
          SugarhouseSettings.USUAL);

  public MakerSettings {
    address = List.copyOf(address);
  }

  /** These, and what changes. */
  MakerSettings with(SettingsChange change) {
    return new MakerSettings(
        either(change.maker(), maker),
        either(change.address(), address),
        either(change.timeZone(), timeZone),
        either(change.currency(), currency),
        either(change.unitHabit(), unitHabit),
        either(change.jurisdiction(), jurisdiction),
        either(change.netContentsRegime(), netContentsRegime),
        change.instruments() == null ? instruments : instruments.with(change.instruments()),
        either(change.cappingTemperature(), cappingTemperature),
        unlessTakenAway(change.labelSheet(), labelSheet, ""),
        unlessTakenAway(change.publicAddress(), publicAddress, ""),
        unlessTakenAway(change.bestByMonths(), bestByMonths, 0),
        either(change.suppliesRule(), suppliesRule),
        change.sugarhouse() == null ? sugarhouse : sugarhouse.with(change.sugarhouse()));
  }

  private static <T> T either(T change, T now) {
    return change == null ? now : change;
  }

  private static <T> T unlessTakenAway(T change, T now, T away) {
    return away.equals(change) ? null : either(change, now);
  }
}
