package org.barreltally.sugarbush.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.sugarbush.Landowner;

/** Landowners, where names and addresses can be removed. */
@ApplicationScoped
public class LandownerRows {

  private static final String SELECT = "SELECT o.id, o.name, o.address FROM landowners o ";

  private final EntityManager entities;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  LandownerRows(EntityManager entities, Days days, Ids ids, RecordedBy recordedBy) {
    this.entities = entities;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  public Optional<Landowner> find(UUID id) {
    return read("WHERE o.id = :id", Map.of("id", id), 1).stream().findFirst();
  }

  /** However its letters are written, large or small. */
  public Optional<Landowner> named(String name) {
    return read("WHERE lower(o.name) = lower(:name)", Map.of("name", name), 1).stream().findFirst();
  }

  /** The landowner of that name, made known if new. */
  public Landowner known(String name) {
    entities
        .createNativeQuery(
            "INSERT INTO landowners (id, name, recorded_at, recorded_by)"
                + " VALUES (:id, :name, :at, :by) ON CONFLICT DO NOTHING")
        .setParameter("id", ids.next())
        .setParameter("name", name)
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
    return named(name).orElseThrow();
  }

  /** Lets nobody else agree, count, deliver on or close leases of this landowner meanwhile. */
  public void lock(UUID id) {
    entities
        .createNativeQuery("SELECT id FROM landowners WHERE id = :id FOR UPDATE")
        .setParameter("id", id)
        .getResultList();
  }

  public void change(UUID id, String name, String address) {
    entities
        .createNativeQuery(
            "UPDATE landowners SET name = :name, address = CAST(:address AS text) WHERE id = :id")
        .setParameter("id", id)
        .setParameter("name", name)
        .setParameter("address", address)
        .executeUpdate();
  }

  /** By name, after a name (or null), at most so many. */
  public List<Landowner> list(String after, int limit) {
    return read(
        "WHERE lower(o.name) > lower(:after) ORDER BY lower(o.name)",
        Map.of("after", after == null ? "" : after),
        limit);
  }

  private List<Landowner> read(String condition, Map<String, Object> parameters, int limit) {
    Query query = entities.createNativeQuery(SELECT + condition, Tuple.class).setMaxResults(limit);
    parameters.forEach(query::setParameter);
    List<?> rows = query.getResultList();
    return rows.stream()
        .map(Tuple.class::cast)
        .map(
            row ->
                new Landowner(
                    row.get("id", UUID.class),
                    row.get("name", String.class),
                    row.get("address", String.class)))
        .toList();
  }
}
