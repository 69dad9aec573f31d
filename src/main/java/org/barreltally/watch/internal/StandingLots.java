package org.barreltally.watch.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.sql.Date;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.ledger.Days;
import org.barreltally.measure.ColorClass;
import org.barreltally.watch.StandingLot;

/** Reads the lots of which something stands at own places, with their newest readings and holds. */
@ApplicationScoped
public class StandingLots {

  private static final String SELECT =
      """
      WITH standing AS (
        SELECT i.lot, CAST(NULL AS text) AS tag, sum(b.amount) AS pieces, false AS plastic_vessel,
          string_agg(DISTINCT i.container, ', ' ORDER BY i.container)
            FILTER (WHERE c.material = 'plastic') AS plastic_sizes
        FROM balances b JOIN items i ON i.id = b.item JOIN places p ON p.code = b.standing_at
          JOIN containers c ON c.code = i.container
        WHERE p.kind IN ('home', 'out') AND b.amount > 0
        GROUP BY i.lot
        UNION ALL
        SELECT f.lot, f.tag, 0, v.material = 'plastic', NULL
        FROM fillings f JOIN vessels v ON v.filling = f.id WHERE f.state <> 'drained')
      SELECT s.lot, s.tag, CAST(s.pieces AS bigint) AS pieces, s.plastic_sizes, s.plastic_vessel,
        l.made_on, l.grade, l.transmittance,
        (SELECT max(g.graded_on) FROM lot_gradings g WHERE g.lot = s.lot) AS last_read,
        CASE WHEN l.held THEN (
          SELECT min(h.recorded_at) FROM lot_holds h WHERE h.lot = s.lot AND h.step = 'held'
            AND h.recorded_at > coalesce((SELECT max(r.recorded_at) FROM lot_holds r
              WHERE r.lot = s.lot AND r.step = 'released'), '-infinity')) END AS held_since
      FROM standing s JOIN lots l ON l.code = s.lot
      ORDER BY s.lot, s.tag
      """;

  private final EntityManager entities;
  private final Days days;

  StandingLots(EntityManager entities, Days days) {
    this.entities = entities;
    this.days = days;
  }

  public List<StandingLot> all() {
    List<?> rows = entities.createNativeQuery(SELECT, Tuple.class).getResultList();
    return rows.stream().map(Tuple.class::cast).map(this::lot).toList();
  }

  private StandingLot lot(Tuple row) {
    String grade = row.get("grade", String.class);
    Instant heldSince = row.get("held_since", Instant.class);
    return new StandingLot(
        row.get("lot", String.class),
        row.get("tag", String.class),
        row.get("pieces", Long.class),
        row.get("plastic_sizes", String.class),
        row.get("plastic_vessel", Boolean.class),
        date(row.get("made_on")),
        date(row.get("last_read")),
        grade == null ? null : ColorClass.of(grade),
        row.get("transmittance", Double.class),
        heldSince == null ? null : days.dateOf(heldSince));
  }

  private static LocalDate date(Object value) {
    return value instanceof Date date ? date.toLocalDate() : (LocalDate) value;
  }
}
