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
      SELECT place, container, grade, lot, on_table FROM (
        SELECT b.place, i.container, i.grade, i.lot, b.amount AS on_table
        FROM balances b JOIN items i ON i.id = b.item
        WHERE b.below_zero AND i.container IS NOT NULL AND i.lot IS NOT NULL AND b.amount < 0
        UNION ALL
        SELECT b.place, i.container, NULL, NULL, CAST(sum(b.amount) AS bigint)
        FROM balances b JOIN items i ON i.id = b.item
        WHERE b.below_zero AND i.container IS NOT NULL
        GROUP BY b.place, i.container HAVING sum(b.amount) < 0) AS needed
        JOIN places p ON p.code = needed.place AND p.kind = 'out'
      WHERE place = coalesce(CAST(:place AS text), place)
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
