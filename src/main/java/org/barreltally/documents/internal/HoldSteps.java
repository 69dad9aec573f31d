package org.barreltally.documents.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.Instant;
import java.util.List;

/** Reads when and why a lot was held. */
@ApplicationScoped
public class HoldSteps {

  private static final String SELECT =
      """
      SELECT h.reason, h.recorded_at FROM lot_holds h
      WHERE h.lot = :lot AND h.step = 'held'
        AND h.recorded_at > coalesce((SELECT max(r.recorded_at) FROM lot_holds r
          WHERE r.lot = h.lot AND r.step = 'released'), '-infinity')
      ORDER BY h.recorded_at, h.id
      """;

  /** A reason and when it was recorded. */
  public record Step(String reason, Instant at) {}

  private final EntityManager entities;

  HoldSteps(EntityManager entities) {
    this.entities = entities;
  }

  /** Why it is held, oldest first; empty for a lot that is not held. */
  public List<Step> sinceRelease(String lot) {
    List<?> rows =
        entities.createNativeQuery(SELECT, Tuple.class).setParameter("lot", lot).getResultList();
    return rows.stream()
        .map(Tuple.class::cast)
        .map(
            row -> new Step(row.get("reason", String.class), row.get("recorded_at", Instant.class)))
        .toList();
  }
}
