package org.barreltally.watch.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.watch.StoreroomTemperature;

/** The temperatures in the database. */
@ApplicationScoped
public class TemperatureRows {

  private static final int CELSIUS_DECIMALS = 6;

  private static final String KEEP =
      """
      INSERT INTO storeroom_temperatures
        (id, place, read_at, value, unit, celsius, recorded_at, recorded_by)
      VALUES (:id, :place, :at, :value, :unit, :celsius, :now, :by)
      """;

  private static final String HOTTEST =
      """
      SELECT DISTINCT ON (place) id, place, read_at, value, unit FROM storeroom_temperatures
      WHERE read_at >= :since ORDER BY place, celsius DESC, read_at DESC
      """;

  private static final String LIST =
      """
      SELECT id, place, read_at, value, unit FROM storeroom_temperatures
      WHERE place = :place AND (CAST(:before AS uuid) IS NULL OR id < CAST(:before AS uuid))
      ORDER BY id DESC
      """;

  private final EntityManager entities;
  private final Days days;
  private final RecordedBy recordedBy;

  TemperatureRows(EntityManager entities, Days days, RecordedBy recordedBy) {
    this.entities = entities;
    this.days = days;
    this.recordedBy = recordedBy;
  }

  public void keep(StoreroomTemperature noted) {
    Quantity said = noted.temperature();
    entities
        .createNativeQuery(KEEP)
        .setParameter("id", noted.id())
        .setParameter("place", noted.place())
        .setParameter("at", noted.at())
        .setParameter("value", said.value())
        .setParameter("unit", said.unit().code())
        .setParameter(
            "celsius", said.in(Unit.DEGC).setScale(CELSIUS_DECIMALS, RoundingMode.HALF_UP))
        .setParameter("now", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
  }

  /** The hottest reading of each place since an instant, the newest of equals. */
  public List<StoreroomTemperature> hottest(Instant since) {
    return read(entities.createNativeQuery(HOTTEST, Tuple.class).setParameter("since", since));
  }

  /** The newest entered first, before one of them (or null), at most so many. */
  public List<StoreroomTemperature> list(String place, UUID before, int limit) {
    return read(
        entities
            .createNativeQuery(LIST, Tuple.class)
            .setParameter("place", place)
            .setParameter("before", before == null ? null : before.toString())
            .setMaxResults(limit));
  }

  private static List<StoreroomTemperature> read(Query query) {
    List<?> rows = query.getResultList();
    return rows.stream().map(Tuple.class::cast).map(TemperatureRows::temperature).toList();
  }

  private static StoreroomTemperature temperature(Tuple row) {
    BigDecimal value = row.get("value", BigDecimal.class).stripTrailingZeros();
    return new StoreroomTemperature(
        row.get("id", UUID.class),
        row.get("place", String.class),
        row.get("read_at", Instant.class),
        Quantity.of(value, Unit.of(row.get("unit", String.class))));
  }
}
