package org.barreltally.settings;

import java.math.BigDecimal;
import org.apache.commons.csv.CSVRecord;
import org.barreltally.measure.InstrumentKind;
import org.barreltally.measure.Instruments;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.ReferenceTable;
import org.barreltally.measure.Unit;

/**
 * How far each instrument may be off, ± half widths as the owner says them; in a change, null where
 * nothing changes. The color meter's are points of percent.
 */
public record InstrumentWidths(
    Quantity platformScale,
    Quantity dipstick,
    Quantity benchScale,
    Quantity hydrometer,
    Quantity refractometer,
    Quantity probe,
    BigDecimal colorMeter) {

  private static final InstrumentWidths USUAL = readUsual();

  /** The usual ones of practice, from {@code db/reference/instruments.csv}. */
  public static InstrumentWidths usual() {
    return USUAL;
  }

  /** These, and what changes. */
  InstrumentWidths with(InstrumentWidths change) {
    return new InstrumentWidths(
        either(change.platformScale, platformScale),
        either(change.dipstick, dipstick),
        either(change.benchScale, benchScale),
        either(change.hydrometer, hydrometer),
        either(change.refractometer, refractometer),
        either(change.probe, probe),
        either(change.colorMeter, colorMeter));
  }

  /** The width of an instrument whose readings have a unit. */
  Quantity width(InstrumentKind kind) {
    return switch (kind) {
      case PLATFORM_SCALE -> platformScale;
      case DIPSTICK -> dipstick;
      case BENCH_SCALE -> benchScale;
      case HYDROMETER -> hydrometer;
      case REFRACTOMETER -> refractometer;
      case PROBE -> probe;
      case COLOR_METER -> throw new IllegalArgumentException("points are a plain number");
    };
  }

  /** For the physics; every width must be there. */
  Instruments asInstruments() {
    Instruments instruments =
        Instruments.usual().with(InstrumentKind.COLOR_METER, colorMeter.doubleValue());
    for (InstrumentKind kind : InstrumentKind.values()) {
      if (kind != InstrumentKind.COLOR_METER) {
        instruments = instruments.with(kind, width(kind));
      }
    }
    return instruments;
  }

  private static <T> T either(T change, T now) {
    return change == null ? now : change;
  }

  private static InstrumentWidths readUsual() {
    return new InstrumentWidths(
        usual(InstrumentKind.PLATFORM_SCALE),
        usual(InstrumentKind.DIPSTICK),
        usual(InstrumentKind.BENCH_SCALE),
        usual(InstrumentKind.HYDROMETER),
        usual(InstrumentKind.REFRACTOMETER),
        usual(InstrumentKind.PROBE),
        new BigDecimal(row(InstrumentKind.COLOR_METER).get("half_width")));
  }

  private static Quantity usual(InstrumentKind kind) {
    CSVRecord row = row(kind);
    return Quantity.of(row.get("half_width"), Unit.of(row.get("unit")));
  }

  private static CSVRecord row(InstrumentKind kind) {
    return ReferenceTable.rows("instruments.csv").stream()
        .filter(row -> row.get("code").equals(kind.code()))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no usual " + kind.code()));
  }
}
