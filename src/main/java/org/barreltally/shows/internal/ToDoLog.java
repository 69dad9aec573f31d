package org.barreltally.shows.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.shows.ToDo;

/** What somebody has to look at after a show, until it is marked as done. */
@ApplicationScoped
public class ToDoLog {

  private final EntityManager entities;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  ToDoLog(EntityManager entities, Days days, Ids ids, RecordedBy recordedBy) {
    this.entities = entities;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  /** Adds one; container, lot and count may be null. */
  public ToDo add(
      UUID show, ToDo.Kind kind, String container, String lot, Long count, String reason) {
    ToDo added = new ToDo(ids.next(), kind, container, lot, count, reason, days.now(), null);
    entities
        .createNativeQuery(
            "INSERT INTO show_to_dos"
                + " (id, show, kind, container, lot, count, reason, recorded_at, recorded_by)"
                + " VALUES (:id, :show, :kind, CAST(:container AS text), CAST(:lot AS text),"
                + " CAST(:count AS bigint), :reason, :at, :by)")
        .setParameter("id", added.id())
        .setParameter("show", show)
        .setParameter("kind", kind.code())
        .setParameter("container", container)
        .setParameter("lot", lot)
        .setParameter("count", count)
        .setParameter("reason", reason)
        .setParameter("at", added.since())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
    return added;
  }

  /** Those of a show in the order they were recorded, done ones among them. */
  public List<ToDo> of(UUID show) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT id, kind, container, lot, count, reason, recorded_at, done_at"
                    + " FROM show_to_dos WHERE show = :show ORDER BY id",
                Tuple.class)
            .setParameter("show", show)
            .getResultList();
    return rows.stream().map(row -> toDo((Tuple) row)).toList();
  }

  /** Marks one as done, if it is not yet; false if the show has none of that id. */
  public boolean done(UUID show, UUID id) {
    entities
        .createNativeQuery(
            "UPDATE show_to_dos SET done_at = :at, done_by = :by"
                + " WHERE show = :show AND id = :id AND done_at IS NULL")
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .setParameter("show", show)
        .setParameter("id", id)
        .executeUpdate();
    return of(show).stream().anyMatch(toDo -> toDo.id().equals(id));
  }

  private static ToDo toDo(Tuple row) {
    return new ToDo(
        row.get("id", UUID.class),
        ToDo.Kind.of(row.get("kind", String.class)),
        row.get("container", String.class),
        row.get("lot", String.class),
        row.get("count", Long.class),
        row.get("reason", String.class),
        row.get("recorded_at", Instant.class),
        row.get("done_at", Instant.class));
  }
}
