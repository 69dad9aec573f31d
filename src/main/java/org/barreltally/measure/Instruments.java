package org.barreltally.measure;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVRecord;

/**
 * How far the maker's instruments may be off: ± half widths in the unit in which each instrument's
 * readings go on (g, mL, °C, °Bx; points of %Tc for the color meter).
 */
public record Instruments(Map<InstrumentKind, Double> halfWidths) {
  private static final Instruments USUAL = read();

  public Instruments {
    halfWidths = Map.copyOf(halfWidths);
    if (!halfWidths.keySet().equals(Set.of(InstrumentKind.values()))) {
      throw new IllegalArgumentException("a half width for every instrument, please");
    }
  }

  /** The usual half widths of practice, from {@code db/reference/instruments.csv}. */
  public static Instruments usual() {
    return USUAL;
  }

  /** The ± half width, in g, mL, °C, °Bx or points of %Tc. */
  public double halfWidth(InstrumentKind kind) {
    return halfWidths.get(kind);
  }

  /** These instruments, one of them with another half width, in the unit as above. */
  public Instruments with(InstrumentKind kind, double halfWidth) {
    Map<InstrumentKind, Double> changed = new EnumMap<>(halfWidths);
    changed.put(kind, halfWidth);
    return new Instruments(changed);
  }

  /**
   * These instruments, one of them with another half width as the owner gives it; a width in °F or
   * °C is a difference of temperatures. Not for the color meter, whose points are plain numbers.
   *
   * @throws UnitMismatch when the instrument does not measure in that unit
   */
  public Instruments with(InstrumentKind kind, Quantity halfWidth) {
    if (kind.base() == null) {
      throw new IllegalArgumentException(kind + " reads plain numbers");
    }
    double width = halfWidth.unit().convertDifference(halfWidth.value().doubleValue(), kind.base());
    return with(kind, width);
  }

  /**
   * A reading with its standard uncertainty, in g, mL, °C or °Bx. A reading in °Bé becomes the °Bx
   * of the same specific gravity. Not for the color meter: see {@link #readTransmittance}.
   *
   * @throws UnitMismatch when the instrument does not measure in that unit
   * @throws OutsideDensityRange when a reading in °Bé is beyond 70 °Bx
   */
  public Uncertain read(InstrumentKind kind, Quantity reading) {
    if (kind.base() == null) {
      throw new IllegalArgumentException(kind + " reads plain numbers");
    }
    double value =
        reading.unit() == Unit.BAUME && kind.base() == Unit.BRIX
            ? Baume.toBrix(reading.value().doubleValue())
            : reading.doubleIn(kind.base());
    return Uncertain.within(value, halfWidth(kind));
  }

  /** A %Tc reading with its standard uncertainty, points. */
  public Uncertain readTransmittance(double percent) {
    return Uncertain.within(percent, halfWidth(InstrumentKind.COLOR_METER));
  }

  private static Instruments read() {
    Map<InstrumentKind, Double> read = new EnumMap<>(InstrumentKind.class);
    for (CSVRecord row : ReferenceTable.rows("instruments.csv")) {
      InstrumentKind kind = InstrumentKind.of(row.get("code"));
      double halfWidth = ReferenceTable.number(row, "half_width");
      read.put(
          kind,
          kind.base() == null
              ? halfWidth
              : Unit.of(row.get("unit")).convertDifference(halfWidth, kind.base()));
    }
    return new Instruments(read);
  }
}
