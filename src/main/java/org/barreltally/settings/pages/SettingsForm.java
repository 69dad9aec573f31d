package org.barreltally.settings.pages;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.measure.Quantity;
import org.barreltally.settings.InstrumentWidths;
import org.barreltally.settings.MakerSettings;
import org.barreltally.settings.SugarhouseSettings;
import org.barreltally.web.pages.Form;

/** The form of the settings, filled with what holds, in the units in which it was said. */
final class SettingsForm {

  private final List<Object> filled = new ArrayList<>();

  private SettingsForm() {}

  static Form of(MakerSettings held, String shownAt, Instant now) {
    SettingsForm form = new SettingsForm();
    form.put(shownAt, now.toString());
    form.put("maker", held.maker());
    for (int n = 0; n < held.address().size(); n++) {
      form.put("address[" + n + "]", held.address().get(n));
    }
    form.put("timeZone", held.timeZone());
    form.put("currency", held.currency());
    form.put("unitHabit", held.unitHabit());
    form.put("jurisdiction", held.jurisdiction());
    form.put("netContentsRegime", held.netContentsRegime());
    form.instruments(held.instruments());
    form.put("cappingTemperature", held.cappingTemperature());
    form.put("labelSheet", held.labelSheet());
    form.put("publicAddress", held.publicAddress());
    form.put("bestByMonths", held.bestByMonths());
    form.put("suppliesRule", held.suppliesRule());
    form.sugarhouse(held.sugarhouse());
    return Form.with(form.filled.toArray());
  }

  private void instruments(InstrumentWidths held) {
    put("instruments.platformScale", held.platformScale());
    put("instruments.dipstick", held.dipstick());
    put("instruments.benchScale", held.benchScale());
    put("instruments.hydrometer", held.hydrometer());
    put("instruments.refractometer", held.refractometer());
    put("instruments.probe", held.probe());
    put("instruments.colorMeter", plain(held.colorMeter()));
  }

  private void sugarhouse(SugarhouseSettings held) {
    put("sugarhouse.tankGaugePercent", plain(held.tankGaugePercent()));
    put("sugarhouse.sapBrix", held.sapBrix());
    put("sugarhouse.barometer", plain(held.barometer().value()));
    put("sugarhouse.barometer.unit", held.barometer().unit().code());
    put("sugarhouse.drawOffElevation", held.drawOffElevation());
  }

  private void put(String field, Quantity quantity) {
    put(field, plain(quantity.value()));
    put(field + ".unit", quantity.unit().code());
  }

  private void put(String field, Object value) {
    filled.add(field);
    filled.add(value);
  }

  private static String plain(BigDecimal number) {
    return number.stripTrailingZeros().toPlainString();
  }
}
