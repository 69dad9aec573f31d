package org.barreltally.settings;

import java.net.URI;
import java.net.URISyntaxException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.barreltally.measure.Dimension;
import org.barreltally.measure.Jurisdiction;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;

/** What a change of settings must be; every field at fault is named at once. */
final class SettingsRules {

  private static final int MAKER_MAX = 100;
  private static final int LINES_MAX = 6;
  private static final int LINE_MAX = 60;
  private static final int ADDRESS_MAX = 200;
  private static final int MONTHS_MAX = 120;
  private static final Pattern SHEET = Pattern.compile("([a-z0-9][a-z0-9-]{0,29})?");
  private static final Quantity COOLEST = Quantity.of(140, Unit.DEGF);
  private static final Quantity HOTTEST = Quantity.of(212, Unit.DEGF);
  private static final Instant LATEST = Instant.parse("3000-01-01T00:00:00Z");

  private final List<FieldError> errors = new ArrayList<>();

  private SettingsRules() {}

  /**
   * @throws InvalidField naming every field that is malformed or out of its range
   * @throws org.barreltally.measure.UnknownJurisdiction if its limits are not in the tables
   */
  static void check(SettingsChange change) {
    if (change == null || saysNothing(change)) {
      throw new InvalidField("maker", "Name at least one setting to change, for example maker.");
    }
    SettingsRules rules = new SettingsRules();
    rules.text(change.maker(), MAKER_MAX, "maker");
    rules.address(change.address());
    rules.zone(change.timeZone());
    rules.currency(change.currency());
    rules.temperature(change.cappingTemperature());
    rules.paper(change);
    rules.publicAddress(change.publicAddress());
    rules.require(
        change.validFrom() == null || change.validFrom().isBefore(LATEST),
        "validFrom",
        "Give an instant before the year 3000, or leave it out to change from now on.");
    rules.errors.addAll(InstrumentRules.errors(change.instruments()));
    rules.errors.addAll(SugarhouseRules.errors(change.sugarhouse()));
    if (!rules.errors.isEmpty()) {
      throw new InvalidField(rules.errors);
    }
    if (change.jurisdiction() != null) {
      Jurisdiction.of(change.jurisdiction());
    }
  }

  private static boolean saysNothing(SettingsChange change) {
    InstrumentWidths nothing = new InstrumentWidths(null, null, null, null, null, null, null);
    return Stream.of(
            change.maker(),
            change.address(),
            change.timeZone(),
            change.currency(),
            change.unitHabit(),
            change.jurisdiction(),
            change.netContentsRegime(),
            nothing.equals(change.instruments()) ? null : change.instruments(),
            change.cappingTemperature(),
            change.labelSheet(),
            change.publicAddress(),
            change.bestByMonths(),
            change.suppliesRule(),
            change.sugarhouse() == null || change.sugarhouse().saysNothing()
                ? null
                : change.sugarhouse())
        .allMatch(Objects::isNull);
  }

  private void text(String text, int longest, String field) {
    require(
        text == null || isLine(text, longest),
        field,
        "Give one line of 1 to " + longest + " characters.");
  }

  private static boolean isLine(String text, int longest) {
    return !text.isBlank()
        && text.codePointCount(0, text.length()) <= longest
        && text.codePoints().noneMatch(Character::isISOControl);
  }

  private void address(List<String> lines) {
    if (lines == null) {
      return;
    }
    require(
        !lines.isEmpty() && lines.size() <= LINES_MAX,
        "address",
        "Give 1 to " + LINES_MAX + " lines; these are " + lines.size() + ".");
    for (int i = 0; i < Math.min(lines.size(), LINES_MAX); i++) {
      String line = lines.get(i);
      require(
          line != null && isLine(line, LINE_MAX),
          "address[" + i + "]",
          "Give one line of 1 to " + LINE_MAX + " characters.");
    }
  }

  private void zone(String zone) {
    require(
        zone == null || ZoneId.getAvailableZoneIds().contains(zone),
        "timeZone",
        "Give a name of the IANA time zone database, for example America/New_York.");
  }

  /** Money is counted in it, so metals and test codes, which have no cents, are none. */
  private void currency(String code) {
    require(
        code == null
            || Currency.getAvailableCurrencies().stream()
                .anyMatch(
                    c -> c.getCurrencyCode().equals(code) && c.getDefaultFractionDigits() >= 0),
        "currency",
        "Give a currency code of ISO 4217, for example USD.");
  }

  private void temperature(Quantity temperature) {
    if (temperature == null) {
      return;
    }
    if (temperature.unit().dimension() != Dimension.TEMPERATURE) {
      require(false, "cappingTemperature.unit", "Give the temperature in degF or degC.");
      return;
    }
    require(
        temperature.in(Unit.DEGF).compareTo(COOLEST.value()) >= 0
            && temperature.in(Unit.DEGF).compareTo(HOTTEST.value()) <= 0,
        "cappingTemperature",
        "Give a temperature from 140 to 212 °F (60 to 100 °C); packing guides ask for 180 °F or"
            + " more.");
  }

  private void paper(SettingsChange change) {
    require(
        change.labelSheet() == null || SHEET.matcher(change.labelSheet()).matches(),
        "labelSheet",
        "Give the code of a label sheet in small letters, digits and dashes, or \"\" for none.");
    require(
        change.bestByMonths() == null
            || change.bestByMonths() >= 0 && change.bestByMonths() <= MONTHS_MAX,
        "bestByMonths",
        "Give months from 1 to " + MONTHS_MAX + ", or 0 for no best-by date.");
  }

  private void publicAddress(String address) {
    require(
        address == null || address.isEmpty() || isWebAddress(address),
        "publicAddress",
        "Give a web address beginning with http:// or https://, at most "
            + ADDRESS_MAX
            + " characters, or \"\" for none.");
  }

  private static boolean isWebAddress(String address) {
    if (address.length() > ADDRESS_MAX) {
      return false;
    }
    try {
      URI uri = new URI(address);
      return ("http".equals(uri.getScheme()) || "https".equals(uri.getScheme()))
          && uri.getHost() != null
          && uri.getUserInfo() == null
          && uri.getFragment() == null;
    } catch (URISyntaxException e) {
      return false;
    }
  }

  private void require(boolean met, String field, String mend) {
    if (!met) {
      errors.add(new FieldError(field, mend));
    }
  }
}
