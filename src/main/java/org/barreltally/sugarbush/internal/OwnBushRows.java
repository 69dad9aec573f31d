package org.barreltally.sugarbush.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.sugarbush.Bush;
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

  /** All of them, each with the newest count of a season. */
  public List<Bush> of(int season) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT b.name, (SELECT t.taps FROM own_bush_taps t WHERE t.bush = b.id"
                    + " AND t.season = :season ORDER BY t.from_day DESC, t.id DESC LIMIT 1) AS taps"
                    + " FROM own_bushes b ORDER BY lower(b.name)",
                Tuple.class)
            .setParameter("season", season)
            .getResultList();
    return rows.stream()
        .map(Tuple.class::cast)
        .map(
            row ->
                new Bush(
                    row.get("name", String.class),
                    true,
                    false,
                    row.get("taps", Integer.class),
                    false))
        .toList();
  }
}
