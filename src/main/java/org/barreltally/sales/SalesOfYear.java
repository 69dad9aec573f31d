package org.barreltally.sales;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.ledger.Bundle;
import org.barreltally.pricing.Money;
import org.barreltally.pricing.TakingsOfYear;

/**
 * What sales took in a year of the book: what they came to, less those taken back in the year, less
 * what was refunded in it. A sale without a known price adds nothing.
 */
@ApplicationScoped
class SalesOfYear implements TakingsOfYear {

  private static final String TAKEN =
      """
      SELECT channel, currency, sum(amount) FROM (
        SELECT s.channel, s.currency, s.total AS amount
          FROM movements m JOIN sales s ON s.movement = m.id WHERE m.book_year = ?
        UNION ALL SELECT s.channel, s.currency, -s.total
          FROM movements m JOIN sales s ON s.movement = m.reverses WHERE m.book_year = ?
        UNION ALL SELECT s.channel, t.currency, -t.refund
          FROM movements m JOIN sale_returns t ON t.movement = m.id JOIN sales s ON s.id = t.sale
          WHERE m.book_year = ?
        UNION ALL SELECT s.channel, t.currency, t.refund
          FROM movements m JOIN sale_returns t ON t.movement = m.reverses
            JOIN sales s ON s.id = t.sale WHERE m.book_year = ?) AS parts
      WHERE amount IS NOT NULL
      GROUP BY channel, currency ORDER BY channel, currency
      """;

  private final EntityManager entities;

  SalesOfYear(EntityManager entities) {
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
                taken.add(
                    new Taken(
                        row.getString(1), Money.rounded(row.getBigDecimal(3), row.getString(2)))),
            year,
            year,
            year,
            year)
        .send(entities);
    return taken;
  }
}
