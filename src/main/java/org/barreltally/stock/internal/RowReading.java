package org.barreltally.stock.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.barreltally.barrels.Density;
import org.barreltally.barrels.Dipstick;
import org.barreltally.barrels.FillBarrel;
import org.barreltally.barrels.Material;
import org.barreltally.barrels.Weighing;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Taste;
import org.barreltally.measure.Unit;
import org.barreltally.refusal.InvalidField;

/** What a row says, in the words of the parts that will enter it. */
public final class RowReading {

  private static final Quantity USUAL_TEMPERATURE = Quantity.of(68, Unit.DEGF);

  private static final Map<String, String> COLUMN_OF_FIELD =
      Map.ofEntries(
          Map.entry("weighing", Column.GROSS.label()),
          Map.entry("weighing.gross", Column.GROSS.label()),
          Map.entry("weighing.gross.unit", Column.GROSS.label()),
          Map.entry("weighing.tare", Column.TARE.label()),
          Map.entry("weighing.tare.unit", Column.TARE.label()),
          Map.entry("dipstick.volume", Column.DIP.label()),
          Map.entry("dipstick.volume.unit", Column.DIP.label()),
          Map.entry("dipstick.temperature", Column.DIP_AT.label()),
          Map.entry("dipstick.temperature.unit", Column.DIP_AT.label()),
          Map.entry("density", Column.BRIX.label()),
          Map.entry("density.reading", Column.BRIX.label()),
          Map.entry("density.reading.unit", Column.BRIX.label()),
          Map.entry("density.temperature", Column.BRIX_AT.label()),
          Map.entry("density.temperature.unit", Column.BRIX_AT.label()),
          Map.entry("density.reference", Column.REFERENCE.label()),
          Map.entry("density.reference.unit", Column.REFERENCE.label()),
          Map.entry("capacity.unit", Column.CAPACITY.label()));

  private RowReading() {}

  /** The column in which a field of a filled barrel stands. */
  public static String columnOf(String field) {
    return COLUMN_OF_FIELD.getOrDefault(field, field);
  }

  /** A barrel as it would be told when it is filled. */
  public static FillBarrel barrel(Cells cells) {
    Quantity gross = cells.quantity(Column.GROSS);
    Quantity tare = cells.quantity(Column.TARE);
    Quantity dip = cells.quantity(Column.DIP);
    Quantity dipAt = cells.quantity(Column.DIP_AT);
    return new FillBarrel(
        cells.text(Column.TAG),
        cells.read(Column.SEASON, RowReading::year),
        cells.day(Column.FILLED_ON),
        cells.read(Column.MATERIAL, RowReading::material),
        cells.quantity(Column.CAPACITY),
        gross == null && tare == null ? null : new Weighing(gross, tare),
        dip == null && dipAt == null ? null : new Dipstick(dip, dipAt),
        density(cells),
        cells.number(Column.TRANSMITTANCE),
        cells.read(Column.TASTE, Taste::of));
  }

  /** A density reading; null where the row has none. */
  public static Density density(Cells cells) {
    Quantity reading = cells.quantity(Column.BRIX, Unit.BRIX);
    Quantity at = cells.quantity(Column.BRIX_AT);
    Density.Instrument instrument = cells.read(Column.INSTRUMENT, RowReading::instrument);
    Quantity reference = cells.quantity(Column.REFERENCE);
    return reading == null
        ? null
        : new Density(
            reading,
            at == null ? USUAL_TEMPERATURE : at,
            instrument == null ? Density.Instrument.REFRACTOMETER : instrument,
            reference);
  }

  /** Crop years, for example {@code 2023 2024}. */
  public static List<Integer> years(String text) {
    List<Integer> years = new ArrayList<>();
    for (String year : text.split("[ +;]+")) {
      years.add(year(year));
    }
    return years;
  }

  private static Integer year(String text) {
    if (!text.matches("[0-9]{4}")) {
      throw new InvalidField("", "Give the crop year, for example 2026.");
    }
    return Integer.valueOf(text);
  }

  private static Material material(String text) {
    for (Material material : Material.values()) {
      if (material.code().equals(text)) {
        return material;
      }
    }
    throw new InvalidField("", "Give one of stainless, plastic, coated-steel, galvanized, other.");
  }

  private static Density.Instrument instrument(String text) {
    for (Density.Instrument instrument : Density.Instrument.values()) {
      if (instrument.code().equals(text)) {
        return instrument;
      }
    }
    throw new InvalidField("", "Give hydrometer or refractometer.");
  }
}
