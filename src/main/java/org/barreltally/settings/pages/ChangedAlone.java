package org.barreltally.settings.pages;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.barreltally.measure.Pressure;
import org.barreltally.settings.InstrumentWidths;
import org.barreltally.settings.MakerSettings;
import org.barreltally.settings.SettingsChange;
import org.barreltally.settings.SugarhouseSettings;

/**
 * What somebody changed on a form that held everything: a field that says what it said when it was
 * shown is left out, so that the history tells true and nobody takes back what another changed
 * meanwhile.
 */
final class ChangedAlone {

  private ChangedAlone() {}

  /**
   * @param shown the settings the form was filled with
   * @param typed all fields as they were sent; null where one was emptied
   */
  static SettingsChange of(MakerSettings shown, SettingsChange typed) {
    return new SettingsChange(
        changed(emptied(typed.maker()), shown.maker()),
        changed(typed.address() == null ? List.of() : typed.address(), shown.address()),
        changed(emptied(typed.timeZone()), shown.timeZone()),
        changed(emptied(typed.currency()), shown.currency()),
        changed(typed.unitHabit(), shown.unitHabit()),
        changed(typed.jurisdiction(), shown.jurisdiction()),
        changed(typed.netContentsRegime(), shown.netContentsRegime()),
        widths(shown.instruments(), typed.instruments()),
        changed(typed.cappingTemperature(), shown.cappingTemperature()),
        changed(emptied(typed.labelSheet()), emptied(shown.labelSheet())),
        changed(emptied(typed.publicAddress()), emptied(shown.publicAddress())),
        changed(none(typed.bestByMonths()), none(shown.bestByMonths())),
        changed(typed.suppliesRule(), shown.suppliesRule()),
        sugarhouse(shown.sugarhouse(), typed.sugarhouse()),
        typed.validFrom());
  }

  /** Whether nothing was changed at all. */
  static boolean saysNothing(SettingsChange change) {
    return change.equals(
        new SettingsChange(
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            change.validFrom()));
  }

  private static InstrumentWidths widths(InstrumentWidths shown, InstrumentWidths typed) {
    if (typed == null) {
      return null;
    }
    InstrumentWidths changed =
        new InstrumentWidths(
            changed(typed.platformScale(), shown.platformScale()),
            changed(typed.dipstick(), shown.dipstick()),
            changed(typed.benchScale(), shown.benchScale()),
            changed(typed.hydrometer(), shown.hydrometer()),
            changed(typed.refractometer(), shown.refractometer()),
            changed(typed.probe(), shown.probe()),
            changed(typed.colorMeter(), shown.colorMeter()));
    InstrumentWidths nothing = new InstrumentWidths(null, null, null, null, null, null, null);
    return changed.equals(nothing) ? null : changed;
  }

  private static SugarhouseSettings sugarhouse(SugarhouseSettings shown, SugarhouseSettings typed) {
    if (typed == null) {
      return null;
    }
    SugarhouseSettings changed =
        new SugarhouseSettings(
            changed(typed.tankGaugePercent(), shown.tankGaugePercent()),
            changed(typed.sapBrix(), shown.sapBrix()),
            changed(typed.barometer(), shown.barometer()),
            changed(typed.drawOffElevation(), shown.drawOffElevation()));
    return changed.equals(new SugarhouseSettings(null, null, null, null)) ? null : changed;
  }

  private static <T> T changed(T typed, T shown) {
    return isSame(typed, shown) ? null : typed;
  }

  private static boolean isSame(Object typed, Object shown) {
    if (typed instanceof Pressure a && shown instanceof Pressure b) {
      return a.unit() == b.unit() && a.value().compareTo(b.value()) == 0;
    }
    if (typed instanceof BigDecimal a && shown instanceof BigDecimal b) {
      return a.compareTo(b) == 0;
    }
    return Objects.equals(typed, shown);
  }

  private static String emptied(String text) {
    return text == null ? "" : text;
  }

  private static Integer none(Integer months) {
    return months == null ? Integer.valueOf(0) : months;
  }
}
