package org.barreltally.shops;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;
import org.barreltally.lots.NamedHolders;

/** Which shops have jars of lots on their shelves. What they sold is with the public. */
@ApplicationScoped
class NamedShops implements NamedHolders {

  private static final String ON_SHELVES =
      """
      SELECT s.name, s.details, s.place, i.lot, i.container, b.amount
      FROM shops s JOIN balances b ON b.standing_at = s.place JOIN items i ON i.id = b.item
      WHERE i.lot = ANY (?::text[]) AND b.amount > 0 ORDER BY s.name, i.lot, i.container
      """;

  private final EntityManager entities;

  NamedShops(EntityManager entities) {
    this.entities = entities;
  }

  @Override
  @Transactional
  public List<Holding> of(Collection<String> lots) {
    List<Holding> holdings = new ArrayList<>();
    new Bundle()
        .ask(
            ON_SHELVES,
            row ->
                holdings.add(
                    new Holding(
                        "shop",
                        row.getString(1),
                        row.getString(2) == null ? List.of() : row.getString(2).lines().toList(),
                        null,
                        row.getString(3),
                        row.getString(4),
                        row.getString(5),
                        row.getLong(6),
                        true,
                        true)),
            Column.of("text", lots))
        .send(entities);
    return holdings;
  }
}
