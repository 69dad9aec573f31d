package org.barreltally.barrels.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.AfterPosting;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.Transfer;

/**
 * Keeps the state of fillings in step with the ledger: drained when nothing is left, opened when
 * some of it went to a run, a buyer or out, full otherwise. A reversal sets it back by itself.
 */
@ApplicationScoped
public class FillingStates implements AfterPosting {

  private static final String FOLLOW =
      """
      UPDATE fillings f SET state = now.state
      FROM (
        SELECT f.id, CASE
            WHEN b.amount = 0 THEN 'drained'
            WHEN EXISTS (
              SELECT 1 FROM balances gone JOIN places p ON p.code = gone.place
              WHERE gone.item = b.item AND gone.amount > 0 AND gone.place <> 'unexplained'
                AND p.kind IN ('outside', 'conversion')) THEN 'opened'
            ELSE 'full' END AS state
        FROM fillings f
          JOIN items i ON i.lot = f.lot AND i.container IS NULL
          JOIN balances b ON b.item = i.id AND b.place = f.place
        WHERE i.id IN (:items)) AS now
      WHERE f.id = now.id AND f.state <> now.state
      """;

  private final EntityManager entities;

  public FillingStates(EntityManager entities) {
    this.entities = entities;
  }

  @Override
  public void posted(List<Movement> movements) {
    List<UUID> items =
        movements.stream()
            .flatMap(movement -> movement.transfers().stream())
            .map(Transfer::item)
            .distinct()
            .toList();
    entities.createNativeQuery(FOLLOW).setParameter("items", items).executeUpdate();
  }
}
