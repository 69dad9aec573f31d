package org.barreltally.barrels.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.barreltally.barrels.Barrel;
import org.barreltally.barrels.BarrelState;
import org.barreltally.barrels.Material;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;
import org.barreltally.lots.Lot;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Taste;
import org.barreltally.measure.Uncertain;

/** Reads vessels with their newest filling, its lot and its balance, in one query. */
@ApplicationScoped
public class BarrelQuery {

  /**
   * The balance is found by its item alone and its place compared then: all barrels stand in a few
   * places, and a join over the place would read every balance in them.
   */
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
        JOIN balances b ON b.item = i.id AND b.place IS NOT DISTINCT FROM f.place
      """;

  private static final String LOCK_FILLINGS =
      """
      SELECT f.id FROM vessels v JOIN fillings f ON f.id = v.filling WHERE v.tag = ANY (?)
      ORDER BY v.tag FOR UPDATE OF f
      """;

  private final EntityManager entities;

  public BarrelQuery(EntityManager entities) {
    this.entities = entities;
  }

  /**
   * The vessels that a condition lets through, by tag.
   *
   * @param condition SQL after WHERE, made in this program
   * @param values of its question marks
   */
  public List<Barrel> read(String condition, int limit, Object... values) {
    List<Object> all = new ArrayList<>(List.of(values));
    all.add(limit);
    List<Barrel> barrels = new ArrayList<>();
    new Bundle()
        .ask(
            SELECT + " WHERE " + condition + " ORDER BY v.tag LIMIT ?",
            row -> barrels.add(barrel(row)),
            all.toArray())
        .send(entities);
    return barrels;
  }

  /**
   * The vessels of some tags, kept from being drawn, graded or held by another until the
   * transaction ends. Fillings are locked first and read only then: a filling that was topped up
   * while we waited has another lot, and a row whose lot changed while it was locked would be left
   * out. Rows are locked by tag, and the lot before its balance, as whoever holds or regrades a lot
   * does, so that nobody waits in a ring.
   */
  public List<Barrel> lock(Collection<String> tags) {
    Column wanted = Column.of("text", tags);
    List<Barrel> barrels = new ArrayList<>();
    Bundle.byKeys()
        .ask(LOCK_FILLINGS, row -> {}, wanted)
        .ask(
            SELECT
                + " WHERE v.tag = ANY (?) ORDER BY v.tag"
                + " FOR UPDATE OF f FOR SHARE OF l FOR UPDATE OF b",
            row -> barrels.add(barrel(row)),
            wanted)
        .send(entities);
    return barrels;
  }

  private static Barrel barrel(ResultSet row) throws SQLException {
    return new Barrel(
        row.getObject("id", UUID.class),
        row.getString("tag"),
        "heel".equals(row.getString("kind")),
        Material.of(row.getString("material")),
        row.getBigDecimal("capacity_ml"),
        row.getString("place"),
        row.getObject("filled_on", LocalDate.class),
        row.getInt("season"),
        BarrelState.of(row.getString("state")),
        lot(row),
        row.getObject("item", UUID.class),
        new Uncertain(row.getLong("amount"), row.getDouble("mass_u")),
        row.getObject("tare_g", Long.class),
        row.getObject("dipstick_gap_ml", Double.class),
        row.getObject("dipstick_gap_beyond", Boolean.class),
        row.getString("version"));
  }

  private static Lot lot(ResultSet row) throws SQLException {
    String grade = row.getString("grade");
    String taste = row.getString("taste");
    return new Lot(
        row.getString("code"),
        Lot.Kind.of(row.getString("lot_kind")),
        row.getObject("made_on", LocalDate.class),
        List.of((Integer[]) row.getArray("seasons").getArray()),
        new Uncertain(row.getDouble("brix"), row.getDouble("brix_u")),
        grade == null ? null : ColorClass.of(grade),
        row.getObject("transmittance", Double.class),
        taste == null ? null : Taste.of(taste),
        row.getBoolean("held"));
  }
}
