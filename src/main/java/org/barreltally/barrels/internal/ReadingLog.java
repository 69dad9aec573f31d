package org.barreltally.barrels.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.barreltally.barrels.Density;
import org.barreltally.barrels.Dipstick;
import org.barreltally.barrels.Weighing;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Uncertain;

/** Keeps every reading as it was entered, beside what it came to. */
@ApplicationScoped
public class ReadingLog {

  /** The filling, its lot and the day that the readings belong to. */
  public record Of(UUID filling, String lot, LocalDate on) {}

  private final EntityManager entities;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  public ReadingLog(EntityManager entities, Days days, Ids ids, RecordedBy recordedBy) {
    this.entities = entities;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  public void weighing(Of of, Weighing weighing, Uncertain grams) {
    keep(of, "weighing", grams, "gross", weighing.gross(), "tare", weighing.tare());
  }

  public void dipstick(Of of, Dipstick dipstick, Uncertain grams) {
    keep(of, "dipstick", grams, "volume", dipstick.volume(), "temperature", dipstick.temperature());
  }

  public void density(Of of, Density density, Uncertain brix) {
    keep(
        of,
        "density",
        brix,
        "reading",
        density.reading(),
        "temperature",
        density.temperature(),
        "instrument",
        density.instrument().code(),
        "reference",
        density.reference());
  }

  /** A reheat before a top-up: the temperature reached, in °C. */
  public void reheat(Of of, Quantity temperature, String by, Uncertain celsius) {
    keep(of, "reheat", celsius, "temperature", temperature, "by", by);
  }

  private void keep(Of of, String kind, Uncertain result, Object... entered) {
    entities.persist(
        new ReadingRow(
            ids.next(),
            of.filling(),
            of.lot(),
            kind,
            of.on(),
            asMap(entered),
            result.value(),
            result.u(),
            days.now(),
            recordedBy.user()));
  }

  private static Map<String, Object> asMap(Object... namesAndValues) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      if (namesAndValues[i + 1] != null) {
        map.put((String) namesAndValues[i], plain(namesAndValues[i + 1]));
      }
    }
    return map;
  }

  private static Object plain(Object value) {
    return value instanceof Quantity q
        ? Map.of("value", q.value(), "unit", q.unit().code())
        : value;
  }
}
