package org.barreltally.bulk;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.ledger.Bundle;
import org.barreltally.pricing.Money;
import org.barreltally.pricing.TakingsOfYear;

/** What barrels sold whole brought in a year of the book, less those taken back in it. */
@ApplicationScoped
class BulkSalesOfYear implements TakingsOfYear {

  private static final String TAKEN =
      """
      SELECT currency, sum(amount) FROM (
        SELECT s.currency, s.amount
          FROM movements m JOIN bulk_sales s ON s.movement = m.id WHERE m.book_year = ?
        UNION ALL SELECT s.currency, -s.amount
          FROM movements m JOIN bulk_sales s ON s.movement = m.reverses WHERE m.book_year = ?)
        AS parts
      GROUP BY currency ORDER BY currency
      """;

  private final EntityManager entities;

  BulkSalesOfYear(EntityManager entities) {
    this.entities = entities;
  }

  @Override
  @Transactional
  public List<Taken> of(int year) {
    List<Taken> taken = new ArrayList<>();
    new Bundle()
        .ask(
            TAKEN,
            row ->
                taken.add(new Taken("bulk", Money.rounded(row.getBigDecimal(2), row.getString(1)))),
            year,
            year)
        .send(entities);
    return taken;
  }
}
