package org.barreltally.settings;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.barreltally.measure.InstrumentKind;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.refusal.Refusal.FieldError;

/** What a half width must be: a quantity the instrument measures, not negative, not absurd. */
final class InstrumentRules {

  private static final BigDecimal PERCENT_MAX = BigDecimal.valueOf(100);

  /** A width beyond so many usual ones is a slip of the pen. */
  private static final double TIMES_USUAL_MAX = 100;

  private static final Map<String, InstrumentKind> FIELDS = fields();

  private InstrumentRules() {}

  /** Every width at fault; none if nothing changes. */
  static List<FieldError> errors(InstrumentWidths said) {
    List<FieldError> errors = new ArrayList<>();
    if (said == null) {
      return errors;
    }
    FIELDS.forEach((field, kind) -> check(said.width(kind), kind, field, errors));
    BigDecimal points = said.colorMeter();
    if (points != null && (points.signum() < 0 || points.compareTo(PERCENT_MAX) > 0)) {
      errors.add(
          new FieldError(
              "instruments.colorMeter", "Give points of percent from 0 to 100, for example 4."));
    }
    return errors;
  }

  private static void check(
      Quantity width, InstrumentKind kind, String field, List<FieldError> errors) {
    if (width == null) {
      return;
    }
    Unit usual = InstrumentWidths.usual().width(kind).unit();
    if (!isMeasuredBy(kind, width.unit())) {
      errors.add(
          new FieldError(
              field + ".unit", "This instrument is off by so many " + usual.code() + ", say."));
    } else if (width.signum() < 0) {
      errors.add(
          new FieldError(field, "An uncertainty is not negative: give how far it may be off."));
    } else if (isAbsurd(width, kind)) {
      errors.add(
          new FieldError(
              field,
              "That is over a hundred times the usual "
                  + InstrumentWidths.usual().width(kind)
                  + ". Check number and unit."));
    }
  }

  /** Widths of sugar instruments are given in °Bx alone: a step in °Bé is no fixed step in °Bx. */
  private static boolean isMeasuredBy(InstrumentKind kind, Unit unit) {
    return kind.base() == Unit.BRIX
        ? unit == Unit.BRIX
        : unit.dimension() == kind.base().dimension();
  }

  private static boolean isAbsurd(Quantity width, InstrumentKind kind) {
    InstrumentWidths usual = InstrumentWidths.usual();
    double most = usual.asInstruments().halfWidth(kind) * TIMES_USUAL_MAX;
    return usual.asInstruments().with(kind, width).halfWidth(kind) > most;
  }

  private static Map<String, InstrumentKind> fields() {
    Map<String, InstrumentKind> fields = new LinkedHashMap<>();
    fields.put("instruments.platformScale", InstrumentKind.PLATFORM_SCALE);
    fields.put("instruments.dipstick", InstrumentKind.DIPSTICK);
    fields.put("instruments.benchScale", InstrumentKind.BENCH_SCALE);
    fields.put("instruments.hydrometer", InstrumentKind.HYDROMETER);
    fields.put("instruments.refractometer", InstrumentKind.REFRACTOMETER);
    fields.put("instruments.probe", InstrumentKind.PROBE);
    return fields;
  }
}
