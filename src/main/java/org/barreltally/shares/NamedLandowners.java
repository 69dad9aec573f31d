package org.barreltally.shares;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.lots.NamedHolders;

/** Which landowners were handed jars of lots, by name. */
@ApplicationScoped
class NamedLandowners implements NamedHolders {

  private static final String HANDED =
      """
      SELECT o.name, o.address, j.lot, j.container, sum(j.count)
      FROM lease_deliveries d JOIN leases l ON l.id = d.lease JOIN landowners o ON o.id = l.landowner
        CROSS JOIN LATERAL jsonb_to_recordset(d.lines) AS j (lot text, container text, count bigint)
      WHERE j.lot = ANY (?::text[]) AND o.name <> ''
        AND NOT EXISTS (SELECT 1 FROM movements r WHERE r.reverses = d.movement)
      GROUP BY o.name, o.address, j.lot, j.container ORDER BY o.name, j.lot, j.container
      """;

  private final EntityManager entities;

  NamedLandowners(EntityManager entities) {
    this.entities = entities;
  }

  @Override
  @Transactional
  public List<Holding> of(Collection<String> lots) {
    List<Holding> holdings = new ArrayList<>();
    new Bundle()
        .ask(
            HANDED,
            row ->
                holdings.add(
                    new Holding(
                        "landowner",
                        row.getString(1),
                        row.getString(2) == null ? List.of() : row.getString(2).lines().toList(),
                        null,
                        PlaceCode.LANDOWNER,
                        row.getString(3),
                        row.getString(4),
                        row.getLong(5),
                        true,
                        true)),
            Column.of("text", lots))
        .send(entities);
    return holdings;
  }
}
