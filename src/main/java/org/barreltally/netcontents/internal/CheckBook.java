package org.barreltally.netcontents.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.netcontents.NetContentsCheck;

/** Keeps checks as they were answered, so that no later rounding, rule or table changes them. */
@ApplicationScoped
public class CheckBook {

  private final EntityManager entities;
  private final Json json;
  private final RecordedBy recordedBy;

  CheckBook(EntityManager entities, Json json, RecordedBy recordedBy) {
    this.entities = entities;
    this.json = json;
    this.recordedBy = recordedBy;
  }

  public void keep(NetContentsCheck check) {
    entities
        .createNativeQuery(
            "INSERT INTO net_contents_checks (id, lot, container, regime, average, individual,"
                + " sheet, recorded_at, recorded_by) VALUES (:id, :lot, :container, :regime,"
                + " :average, :individual, CAST(:sheet AS jsonb), :at, :by)")
        .setParameter("id", check.id())
        .setParameter("lot", check.lot())
        .setParameter("container", check.container())
        .setParameter("regime", check.regime().code())
        .setParameter("average", check.average().code())
        .setParameter("individual", check.individual().code())
        .setParameter("sheet", json.write(check))
        .setParameter("at", check.checkedAt())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
  }

  public Optional<NetContentsCheck> find(String lot, UUID id) {
    return read(
            entities
                .createNativeQuery(
                    "SELECT CAST(sheet AS text) FROM net_contents_checks"
                        + " WHERE lot = :lot AND id = :id")
                .setParameter("lot", lot)
                .setParameter("id", id)
                .getResultList())
        .stream()
        .findFirst();
  }

  /** Checks of a lot, oldest first, after an id, at most so many. */
  public List<NetContentsCheck> list(String lot, UUID after, int limit) {
    return read(
        entities
            .createNativeQuery(
                "SELECT CAST(sheet AS text) FROM net_contents_checks WHERE lot = :lot"
                    + " AND id > :after ORDER BY id")
            .setParameter("lot", lot)
            .setParameter("after", after == null ? new UUID(0, 0) : after)
            .setMaxResults(limit)
            .getResultList());
  }

  private List<NetContentsCheck> read(List<?> sheets) {
    return sheets.stream().map(sheet -> json.read(sheet, NetContentsCheck.class)).toList();
  }
}
