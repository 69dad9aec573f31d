package org.barreltally.sales;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import jakarta.transaction.Transactional;
import java.util.List;
import org.barreltally.measure.ColorClass;

/** Which jars at tables should be counted, because more left than came by the book. */
@ApplicationScoped
public class CountsNeeded {

  /** A lot below zero, or all jars of a size together, those without lot among them. */
  private static final String NEEDED =
      """
      WITH there AS (
        SELECT b.place, i.container, i.grade, i.lot, b.amount
        FROM places p JOIN balances b ON b.standing_at = p.code JOIN items i ON i.id = b.item
        WHERE p.kind = 'out' AND p.below_zero AND i.container IS NOT NULL
          AND p.code = coalesce(CAST(:place AS text), p.code))
      SELECT place, container, grade, lot, amount AS on_table FROM there
      WHERE lot IS NOT NULL AND amount < 0
      UNION ALL
      SELECT place, container, NULL, NULL, CAST(sum(amount) AS bigint) FROM there
      GROUP BY place, container HAVING sum(amount) < 0
      ORDER BY place, container, lot NULLS FIRST
      """;

  private final EntityManager entities;

  CountsNeeded(EntityManager entities) {
    this.entities = entities;
  }

  /**
   * What needs a count, by place, size and lot.
   *
   * @param place null for all tables
   */
  @Transactional
  public List<CountNeeded> list(String place) {
    List<?> rows =
        entities
            .createNativeQuery(NEEDED, Tuple.class)
            .setParameter("place", place)
            .getResultList();
    return rows.stream().map(Tuple.class::cast).map(CountsNeeded::needed).toList();
  }

  private static CountNeeded needed(Tuple row) {
    String lot = row.get("lot", String.class);
    String grade = row.get("grade", String.class);
    long onTable = row.get("on_table", Long.class);
    String container = row.get("container", String.class);
    return new CountNeeded(
        row.get("place", String.class),
        container,
        grade == null ? null : ColorClass.of(grade),
        lot,
        onTable,
        lot == null
            ? "%d × %s more were sold than came to the table by the book. Count the table; look for a pack-out that was not entered, or a sale told twice."
                .formatted(-onTable, container)
            : "%d × %s of lot %s more left the table than came there. Count it; look for a label that was misread."
                .formatted(-onTable, container, lot));
  }
}
