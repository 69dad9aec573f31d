package org.barreltally.barrels.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.sql.Date;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.barrels.Barrel;
import org.barreltally.barrels.BarrelState;
import org.barreltally.barrels.Material;
import org.barreltally.lots.Lot;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Taste;
import org.barreltally.measure.Uncertain;

/** Reads vessels with their newest filling, its lot and its balance, in one query. */
@ApplicationScoped
public class BarrelQuery {

  private static final String SELECT =
      """
      SELECT f.id, v.tag, v.kind, v.material, v.capacity_ml, f.place, f.filled_on, f.season, f.state,
        l.code, l.kind AS lot_kind, l.made_on, l.seasons, l.brix, l.brix_u, l.grade, l.transmittance, l.taste, l.held,
        i.id AS item, b.amount, f.mass_u, f.tare_g, f.dipstick_gap_ml, f.dipstick_gap_beyond,
        l.code || '.' || b.seq
          || '.' || (SELECT count(*) FROM lot_gradings g WHERE g.lot = l.code)
          || '.' || (SELECT count(*) FROM lot_holds h WHERE h.lot = l.code)
          || '.' || (SELECT count(*) FROM barrel_readings r WHERE r.filling = f.id) AS version
      FROM vessels v JOIN fillings f ON f.id = v.filling
        JOIN lots l ON l.code = f.lot
        JOIN items i ON i.lot = l.code AND i.container IS NULL
        JOIN balances b ON b.item = i.id AND b.place = f.place
      """;

  private static final String LOCK_FILLINGS =
      "SELECT f.id FROM vessels v JOIN fillings f ON f.id = v.filling WHERE %s ORDER BY v.tag"
          + " FOR UPDATE OF f";

  private final EntityManager entities;

  public BarrelQuery(EntityManager entities) {
    this.entities = entities;
  }

  /**
   * The vessels that a condition lets through, by tag.
   *
   * @param condition SQL after WHERE, made in this program, with named parameters
   */
  public List<Barrel> read(String condition, Map<String, Object> parameters, int limit) {
    return run(condition + " ORDER BY v.tag", parameters, limit);
  }

  /**
   * The same, kept from being drawn, graded or held by another until the transaction ends. Fillings
   * are locked first and read only then: a filling that was topped up while we waited has another
   * lot, and a row whose lot changed while it was locked would be left out. Rows are locked by tag,
   * and the lot before its balance, as whoever holds or regrades a lot does, so that nobody waits
   * in a ring.
   *
   * @param condition as for {@link #read}, on the vessel {@code v} alone
   */
  public List<Barrel> lock(String condition, Map<String, Object> parameters) {
    entities.flush();
    Query fillings = entities.createNativeQuery(LOCK_FILLINGS.formatted(condition));
    parameters.forEach(fillings::setParameter);
    fillings.getResultList();
    return run(
        condition + " ORDER BY v.tag FOR UPDATE OF f FOR SHARE OF l FOR UPDATE OF b",
        parameters,
        Integer.MAX_VALUE);
  }

  private List<Barrel> run(String condition, Map<String, Object> parameters, int limit) {
    entities.flush();
    Query query =
        entities
            .createNativeQuery(SELECT + " WHERE " + condition, Tuple.class)
            .setMaxResults(limit);
    parameters.forEach(query::setParameter);
    List<?> rows = query.getResultList();
    return rows.stream().map(row -> barrel((Tuple) row)).toList();
  }

  private static Barrel barrel(Tuple row) {
    return new Barrel(
        row.get("id", UUID.class),
        row.get("tag", String.class),
        "heel".equals(row.get("kind", String.class)),
        Material.of(row.get("material", String.class)),
        row.get("capacity_ml", BigDecimal.class),
        row.get("place", String.class),
        date(row.get("filled_on")),
        row.get("season", Integer.class),
        BarrelState.of(row.get("state", String.class)),
        lot(row),
        row.get("item", UUID.class),
        new Uncertain(row.get("amount", Long.class), row.get("mass_u", Double.class)),
        row.get("tare_g", Long.class),
        row.get("dipstick_gap_ml", Double.class),
        row.get("dipstick_gap_beyond", Boolean.class),
        row.get("version", String.class));
  }

  private static Lot lot(Tuple row) {
    String grade = row.get("grade", String.class);
    String taste = row.get("taste", String.class);
    return new Lot(
        row.get("code", String.class),
        Lot.Kind.of(row.get("lot_kind", String.class)),
        date(row.get("made_on")),
        Arrays.asList((Integer[]) row.get("seasons")),
        new Uncertain(row.get("brix", Double.class), row.get("brix_u", Double.class)),
        grade == null ? null : ColorClass.of(grade),
        row.get("transmittance", Double.class),
        taste == null ? null : Taste.of(taste),
        row.get("held", Boolean.class));
  }

  private static LocalDate date(Object value) {
    return value instanceof Date date ? date.toLocalDate() : (LocalDate) value;
  }
}
