package org.barreltally.settings.pages;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.barreltally.measure.Jurisdiction;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.web.pages.Show;
import org.barreltally.web.pages.Words;

/** A setting in words, in the unit in which the owner said it. */
final class SettingText {

  private SettingText() {}

  /** Its name as a person reads it. */
  static String name(String setting) {
    return Words.of("settings.name." + setting);
  }

  /** Its value with its unit; in words where nothing is set. */
  static String value(String setting, JsonNode value) {
    if (isNothing(value)) {
      return Words.of("settings.none");
    }
    return switch (setting) {
      case "unitHabit", "netContentsRegime", "suppliesRule" ->
          Words.of("settings." + setting + "." + value.textValue());
      case "jurisdiction" -> Jurisdiction.of(value.textValue()).name();
      case "bestByMonths" ->
          value.intValue() == 0
              ? Words.of("settings.none")
              : Words.count("settings.months", value.intValue());
      case "instruments.colorMeter" ->
          Words.of("settings.points", Show.number(value.decimalValue(), 1));
      case "sugarhouse.tankGaugePercent" -> Show.percent(value.decimalValue());
      case "sugarhouse.barometer" ->
          value.path("value").decimalValue().stripTrailingZeros().toPlainString()
              + "\u00a0"
              + value.path("unit").textValue();
      case "sugarhouse" -> parts(value);
      default -> plain(value);
    };
  }

  private static boolean isNothing(JsonNode value) {
    return value == null
        || value.isNull()
        || value.isMissingNode()
        || value.isTextual() && value.textValue().isEmpty();
  }

  private static String parts(JsonNode value) {
    List<String> parts = new ArrayList<>();
    for (Map.Entry<String, JsonNode> part : value.properties()) {
      String setting = "sugarhouse." + part.getKey();
      parts.add(name(setting) + ": " + value(setting, part.getValue()));
    }
    return String.join("; ", parts);
  }

  private static String plain(JsonNode value) {
    if (value.isArray()) {
      List<String> lines = new ArrayList<>();
      value.forEach(line -> lines.add(line.asText()));
      return String.join(", ", lines);
    }
    if (value.isObject()) {
      return Show.size(
          Quantity.of(value.path("value").decimalValue(), Unit.of(value.path("unit").textValue())));
    }
    return value.asText();
  }
}
