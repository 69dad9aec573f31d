package org.barreltally.shows.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.shows.settling.SettleShow;
import org.barreltally.shows.settling.Settlement;

/** Settlements as they were told, only ever added. */
@ApplicationScoped
public class SettlementLog {

  private final EntityManager entities;
  private final ShowJson json;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  SettlementLog(EntityManager entities, ShowJson json, Days days, Ids ids, RecordedBy recordedBy) {
    this.entities = entities;
    this.json = json;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  /**
   * @param movement null if nothing was posted
   */
  public void keep(UUID show, SettleShow said, Settlement told, UUID movement) {
    entities
        .createNativeQuery(
            "INSERT INTO show_settlements (id, show, said, told, movement, recorded_at, recorded_by)"
                + " VALUES (:id, :show, CAST(:said AS jsonb), CAST(:told AS jsonb),"
                + " CAST(:movement AS uuid), :at, :by)")
        .setParameter("id", ids.next())
        .setParameter("show", show)
        .setParameter("said", json.written(said))
        .setParameter("told", json.written(told))
        .setParameter("movement", movement == null ? null : movement.toString())
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
  }

  /** Whether jars of a show were counted back, in a count that was not taken back. */
  public boolean wasCounted(UUID show) {
    return !entities
        .createNativeQuery(
            "SELECT 1 FROM show_backs b WHERE b.show = :show AND jsonb_array_length(b.lines) > 0"
                + " AND NOT EXISTS (SELECT 1 FROM movements r WHERE r.reverses = b.movement)")
        .setParameter("show", show)
        .getResultList()
        .isEmpty();
  }

  /** What was said with the newest settlement of a show. */
  public Optional<SettleShow> newest(UUID show) {
    return column("CAST(said AS text)", "", show)
        .map(said -> json.read((String) said, SettleShow.class));
  }

  /** The newest movement that a settlement of a show posted. */
  public Optional<UUID> movement(UUID show) {
    return column("movement", " AND movement IS NOT NULL", show).map(UUID.class::cast);
  }

  private Optional<Object> column(String column, String more, UUID show) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT "
                    + column
                    + " FROM show_settlements WHERE show = :show"
                    + more
                    + " ORDER BY id DESC LIMIT 1")
            .setParameter("show", show)
            .getResultList();
    return rows.stream().map(Object.class::cast).findFirst();
  }
}
