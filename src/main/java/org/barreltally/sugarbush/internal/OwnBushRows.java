package org.barreltally.sugarbush.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.sugarbush.TapCount;

/** Bushes of one's own and their taps. */
@ApplicationScoped
public class OwnBushRows {

  private final EntityManager entities;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  OwnBushRows(EntityManager entities, Days days, Ids ids, RecordedBy recordedBy) {
    this.entities = entities;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  /** False if it was known. */
  public boolean add(String name) {
    return entities
            .createNativeQuery(
                "INSERT INTO own_bushes (id, name, recorded_at, recorded_by)"
                    + " VALUES (:id, :name, :at, :by) ON CONFLICT DO NOTHING")
            .setParameter("id", ids.next())
            .setParameter("name", name)
            .setParameter("at", days.now())
            .setParameter("by", recordedBy.user())
            .executeUpdate()
        == 1;
  }

  /** However its letters are written, large or small. */
  public Optional<UUID> find(String name) {
    List<?> found =
        entities
            .createNativeQuery("SELECT id FROM own_bushes WHERE lower(name) = lower(:name)")
            .setParameter("name", name.strip())
            .getResultList();
    return found.stream().map(UUID.class::cast).findFirst();
  }

  public void count(UUID bush, int season, TapCount count) {
    entities
        .createNativeQuery(
            "INSERT INTO own_bush_taps (id, bush, season, from_day, taps, note, recorded_at,"
                + " recorded_by) VALUES (:id, :bush, :season, :from, :taps, CAST(:note AS text),"
                + " :at, :by)")
        .setParameter("id", ids.next())
        .setParameter("bush", bush)
        .setParameter("season", season)
        .setParameter("from", count.from())
        .setParameter("taps", count.count())
        .setParameter("note", count.note())
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
  }
}
