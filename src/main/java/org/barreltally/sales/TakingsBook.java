package org.barreltally.sales;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.pricing.Money;
import org.barreltally.sales.drawer.Clue;

/** The money that sales at a place brought. */
@ApplicationScoped
public class TakingsBook {

  private static final String STANDING =
      """
      FROM sales s
      WHERE s.place = :place AND NOT EXISTS (SELECT 1 FROM movements r WHERE r.reverses = s.movement)
      """;

  private static final String SUMS =
      """
      SELECT coalesce(sum(s.cash), 0) AS cash, coalesce(sum(s.change), 0) AS change,
        coalesce(sum(s.card), 0) AS card, coalesce(sum(s.owing), 0) AS owing,
        coalesce(sum(s.total) FILTER (WHERE position('"paid":' in s.said) = 0), 0) AS unsaid,
        coalesce(sum(s.tax), 0) AS tax, count(*) AS sales,
        count(*) FILTER (WHERE EXISTS (SELECT 1 FROM sale_notes n WHERE n.sale = s.id
          AND n.code IN ('no-price', 'paid-unsaid', 'paid-differs'))) AS odd
      """;

  private static final String NOT_CASH =
      """
      SELECT s.happened_at, s.total, s.id,
        CASE WHEN s.card IS NOT NULL AND s.card > 0 THEN 'card' ELSE 'owing' END AS way
      """;

  private final EntityManager entities;

  TakingsBook(EntityManager entities) {
    this.entities = entities;
  }

  @Transactional
  public Takings of(String place, String currency) {
    Tuple row =
        (Tuple)
            entities
                .createNativeQuery(SUMS + STANDING, Tuple.class)
                .setParameter("place", place)
                .getSingleResult();
    return new Takings(
        money(row, "cash", currency),
        money(row, "change", currency),
        money(row, "card", currency),
        money(row, "owing", currency),
        money(row, "unsaid", currency),
        money(row, "tax", currency),
        row.get("sales", Long.class),
        row.get("odd", Long.class));
  }

  /** Sales that were not paid in cash: told wrongly, one of them may be what a drawer is off by. */
  @Transactional
  public List<Clue> notInCash(String place, String currency) {
    List<?> rows =
        entities
            .createNativeQuery(
                NOT_CASH
                    + STANDING
                    + " AND s.total > 0 AND coalesce(s.cash, 0) = 0 ORDER BY s.id LIMIT 2000",
                Tuple.class)
            .setParameter("place", place)
            .getResultList();
    List<Clue> clues = new ArrayList<>();
    for (Object each : rows) {
      Tuple row = (Tuple) each;
      clues.add(
          Clue.once(
              "the sale of %s told as %s (%s)"
                  .formatted(
                      row.get("happened_at", Instant.class),
                      row.get("way", String.class),
                      row.get("id")),
              money(row, "total", currency)));
    }
    return clues;
  }

  private static Money money(Tuple row, String column, String currency) {
    return Money.rounded(row.get(column, BigDecimal.class), currency);
  }
}
