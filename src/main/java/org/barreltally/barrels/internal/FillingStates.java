package org.barreltally.barrels.internal;

import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.AfterPosting;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.Transfer;

/**
 * Keeps the state of fillings in step with the ledger: drained when nothing is left, opened when
 * some of it went to a run, a buyer or out, full otherwise. A reversal sets it back by itself.
 */
@ApplicationScoped
@Priority(2)
public class FillingStates implements AfterPosting {

  /** Scalar subqueries, so that each balance is looked up by its key however many there are. */
  private static final String FOLLOW =
      """
      UPDATE fillings f SET state = now.state
      FROM (
        SELECT f.id, CASE
            WHEN (SELECT b.amount FROM balances b WHERE b.place = f.place AND b.item = i.id) = 0
              THEN 'drained'
            WHEN (
              SELECT true FROM balances gone JOIN places p ON p.code = gone.place
              WHERE gone.item = i.id AND gone.amount > 0 AND gone.place <> 'unexplained'
                AND p.kind IN ('outside', 'conversion') LIMIT 1) THEN 'opened'
            ELSE 'full' END AS state
        FROM items i JOIN fillings f ON f.lot = i.lot
        WHERE i.id = ANY (?::uuid[]) AND i.container IS NULL) AS now
      WHERE f.id = now.id AND f.state <> now.state
      """;

  private static final String LOCK =
      """
      SELECT f.id FROM fillings f WHERE f.lot IN (
        SELECT i.lot FROM entries e JOIN items i ON i.id = e.item
        WHERE e.movement = ? AND i.container IS NULL)
      ORDER BY f.tag FOR UPDATE
      """;

  private final EntityManager entities;

  FillingStates(EntityManager entities) {
    this.entities = entities;
  }

  /** Whoever draws from vessels locks their fillings first, and their balances then. */
  @Override
  public void reversing(UUID original) {
    Bundle.byKeys().ask(LOCK, row -> {}, original).send(entities);
  }

  @Override
  public void posted(List<Movement> movements, Bundle write) {
    List<UUID> items =
        movements.stream()
            .flatMap(movement -> movement.transfers().stream())
            .map(Transfer::item)
            .distinct()
            .toList();
    write.add(FOLLOW, Column.of("uuid", items));
  }
}
