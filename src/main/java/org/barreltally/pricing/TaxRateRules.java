package org.barreltally.pricing;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.barreltally.ledger.Days;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;

/** What a tax rate must be; every field at fault is named at once. */
final class TaxRateRules {

  private static final Pattern PLACE =
      Pattern.compile("[\\p{L}\\p{N} .,'’()-]+(/[\\p{L}\\p{N} .,'’()-]+){0,3}");
  private static final int PLACE_MAX = 80;
  private static final int SOURCE_MAX = 200;
  private static final int DECIMALS_MAX = 4;
  private static final BigDecimal MOST = BigDecimal.valueOf(100);

  private final List<FieldError> errors = new ArrayList<>();

  private TaxRateRules() {}

  static void check(
      ProductClass productClass,
      String place,
      BigDecimal percent,
      LocalDate from,
      String source,
      Days days) {
    TaxRateRules rules = new TaxRateRules();
    rules.require(productClass != null, "productClass", "Give one of food, gift, other.");
    rules.require(
        place != null
            && !place.isBlank()
            && place.length() <= PLACE_MAX
            && PLACE.matcher(place.strip()).matches(),
        "place",
        "Give a region, or a region, a slash and a town, at most "
            + PLACE_MAX
            + " characters, for example VT/Millbrook Hollow.");
    rules.percent(percent);
    try {
      days.known(from, "from");
    } catch (InvalidField malformed) {
      rules.errors.addAll(malformed.errors());
    }
    rules.require(
        source == null || !source.isBlank() && source.length() <= SOURCE_MAX,
        "source",
        "Say where it was read, in at most " + SOURCE_MAX + " characters, or leave it out.");
    if (!rules.errors.isEmpty()) {
      throw new InvalidField(rules.errors);
    }
  }

  private void percent(BigDecimal percent) {
    require(
        percent != null
            && percent.signum() >= 0
            && percent.compareTo(MOST) <= 0
            && percent.stripTrailingZeros().scale() <= DECIMALS_MAX,
        "percent",
        "Give percent from 0 to 100 with at most " + DECIMALS_MAX + " decimals, for example 6.25.");
  }

  private void require(boolean met, String field, String mend) {
    if (!met) {
      errors.add(new FieldError(field, mend));
    }
  }
}
