package org.barreltally.supplies.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.sql.Date;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.supplies.SupplyMovement;

/** Reads what happened to supplies. */
@ApplicationScoped
public class SupplyHistory {

  private static final String SELECT =
      """
      SELECT m.id, m.supply, m.seq, m.kind, m.happened_on, m.pieces, m.change, m.on_hand_after,
        m.movement, m.note
      FROM supply_movements m
      """;

  /** A count that was recorded after the run, of its day or later, found the shelf as it is. */
  private static final String NOT_COUNTED_SINCE =
      """
      NOT EXISTS (SELECT 1 FROM supply_movements c WHERE c.supply = m.supply
        AND c.kind = 'count' AND c.seq > m.seq AND c.happened_on >= m.happened_on)
      """;

  private final EntityManager entities;

  SupplyHistory(EntityManager entities) {
    this.entities = entities;
  }

  /** In order, after a number, at most so many. */
  public List<SupplyMovement> of(String supply, long after, int limit) {
    return read(
        "WHERE m.supply = :supply AND m.seq > :after ORDER BY m.seq",
        Map.of("supply", supply, "after", after),
        limit);
  }

  /** What a run used up, by supply. */
  public List<SupplyMovement> usedIn(UUID run) {
    return read(
        "WHERE m.movement = :run AND m.kind = 'run' ORDER BY m.supply",
        Map.of("run", run),
        Integer.MAX_VALUE);
  }

  /** Of what a run used up, the supplies that were not counted since. */
  public List<String> notCountedSince(UUID run) {
    return read(
            "WHERE m.movement = :run AND m.kind = 'run' AND " + NOT_COUNTED_SINCE,
            Map.of("run", run),
            Integer.MAX_VALUE)
        .stream()
        .map(SupplyMovement::supply)
        .toList();
  }

  private List<SupplyMovement> read(String where, Map<String, Object> parameters, int limit) {
    Query query = entities.createNativeQuery(SELECT + where, Tuple.class).setMaxResults(limit);
    parameters.forEach(query::setParameter);
    List<?> rows = query.getResultList();
    return rows.stream().map(Tuple.class::cast).map(SupplyHistory::movement).toList();
  }

  private static SupplyMovement movement(Tuple row) {
    Object on = row.get("happened_on");
    return new SupplyMovement(
        row.get("id", UUID.class),
        row.get("supply", String.class),
        row.get("seq", Long.class),
        SupplyMovement.Kind.of(row.get("kind", String.class)),
        on instanceof Date date ? date.toLocalDate() : (LocalDate) on,
        row.get("pieces", Long.class),
        row.get("change", Long.class),
        row.get("on_hand_after", Long.class),
        row.get("movement", UUID.class),
        row.get("note", String.class));
  }
}
