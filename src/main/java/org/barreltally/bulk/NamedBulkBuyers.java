package org.barreltally.bulk;

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

/** Who bought barrels of lots, by name. */
@ApplicationScoped
class NamedBulkBuyers implements NamedHolders {

  private static final String SOLD =
      """
      SELECT b.name, b.details, s.lot, sum(e.amount)
      FROM bulk_sales s JOIN bulk_buyers b ON b.id = s.buyer
        JOIN entries e ON e.movement = s.movement AND e.place = 'bulk-buyer'
      WHERE s.lot = ANY (?::text[]) AND b.name <> ''
        AND NOT EXISTS (SELECT 1 FROM movements r WHERE r.reverses = s.movement)
      GROUP BY b.name, b.details, s.lot HAVING sum(e.amount) > 0
      ORDER BY b.name, s.lot
      """;

  private final EntityManager entities;

  NamedBulkBuyers(EntityManager entities) {
    this.entities = entities;
  }

  @Override
  @Transactional
  public List<Holding> of(Collection<String> lots) {
    List<Holding> holdings = new ArrayList<>();
    new Bundle()
        .ask(
            SOLD,
            row ->
                holdings.add(
                    new Holding(
                        "bulk",
                        row.getString(1),
                        List.of(),
                        row.getString(2),
                        PlaceCode.BULK_BUYER,
                        row.getString(3),
                        null,
                        row.getLong(4),
                        true,
                        true)),
            Column.of("text", lots))
        .send(entities);
    return holdings;
  }
}
