package org.barreltally.settings;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.measure.Unit;
import org.barreltally.refusal.Refusal.FieldError;

/** What the sugarhouse's settings must be: not negative, not absurd. */
final class SugarhouseRules {

  private static final BigDecimal PERCENT_MAX = BigDecimal.valueOf(50);
  private static final double BRIX_MAX = 5;
  private static final double PASCAL_MAX = 5_000;
  private static final double CELSIUS_MAX = 10;

  private SugarhouseRules() {}

  /** Every setting at fault; none if nothing changes. */
  static List<FieldError> errors(SugarhouseSettings said) {
    List<FieldError> errors = new ArrayList<>();
    if (said == null) {
      return errors;
    }
    BigDecimal percent = said.tankGaugePercent();
    if (percent != null && (percent.signum() < 0 || percent.compareTo(PERCENT_MAX) > 0)) {
      add(errors, "tankGaugePercent", "Give percent from 0 to 50, for example 3.");
    }
    if (said.sapBrix() != null) {
      if (said.sapBrix().unit() != Unit.BRIX) {
        add(errors, "sapBrix.unit", "Give how far the reading may be off in Brix.");
      } else if (said.sapBrix().signum() < 0 || said.sapBrix().value().doubleValue() > BRIX_MAX) {
        add(errors, "sapBrix", "Give 0 to 5 Brix, for example 0.2.");
      }
    }
    if (said.barometer() != null
        && (said.barometer().value().signum() < 0 || said.barometer().pascal() > PASCAL_MAX)) {
      add(errors, "barometer", "Give how far it may be off, 0 to 50 hPa.");
    }
    if (said.drawOffElevation() != null) {
      elevation(said, errors);
    }
    return errors;
  }

  private static void elevation(SugarhouseSettings said, List<FieldError> errors) {
    if (!said.isElevationTemperature()) {
      add(errors, "drawOffElevation.unit", "Give a difference in degF or degC.");
    } else if (said.drawOffElevation().signum() <= 0
        || said.elevationCelsius().value() > CELSIUS_MAX) {
      add(
          errors,
          "drawOffElevation",
          "Give how far above water syrup of 66.0 Brix boils: above 0 to 18 degF, commonly 7.1.");
    }
  }

  private static void add(List<FieldError> errors, String field, String mend) {
    errors.add(new FieldError("sugarhouse." + field, mend));
  }
}
