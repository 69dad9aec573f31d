package org.barreltally.shows;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import jakarta.transaction.Transactional;
import java.util.List;
import org.barreltally.measure.ColorClass;

/** What the ledger tells of a show's table, container by container and lot by lot. */
@ApplicationScoped
public class TableBook {

  /**
   * A reversal counts with the kind it takes back, so both vanish from the sums. A movement home
   * takes broken and sampled jars along as entries of their own at the places outside.
   */
  private static final String SQL =
      """
      WITH told AS (
        SELECT coalesce(o.kind, m.kind) AS kind, e.item, e.place, e.amount,
          (e.amount > 0) = (m.reverses IS NULL) AS came
        FROM movements m LEFT JOIN movements o ON o.id = m.reverses
          JOIN entries e ON e.movement = m.id
        WHERE m.id IN (SELECT movement FROM entries WHERE place = :place)
      ), sums AS (
        SELECT t.item,
          coalesce(sum(amount) FILTER (WHERE place = :place AND kind = 'pack-out'), 0) AS packed_out,
          coalesce(sum(amount) FILTER (WHERE place = :place AND kind = 'table-transfer' AND came), 0)
            AS received,
          coalesce(-sum(amount) FILTER (WHERE place = :place AND kind = 'table-transfer' AND NOT came), 0)
            AS given,
          coalesce(sum(amount) FILTER (WHERE p.kind_of = 'home' AND kind = 'back'), 0) AS back,
          coalesce(sum(amount) FILTER (WHERE place = 'broken' AND kind IN ('back', 'write-off')), 0)
            AS broken,
          coalesce(sum(amount) FILTER (WHERE place = 'sampled' AND kind IN ('back', 'write-off')), 0)
            AS sampled,
          coalesce(-sum(amount) FILTER
            (WHERE place = :place AND kind IN ('sale', 'sale-return', 'settlement')), 0) AS sold,
          coalesce(sum(amount) FILTER (WHERE place = :place), 0) AS on_table
        FROM told t JOIN (SELECT code, kind AS kind_of FROM places) AS p ON p.code = t.place
        GROUP BY t.item
      )
      SELECT i.container, i.lot, i.grade, packed_out, received, given, back, broken, sampled, sold,
        on_table
      FROM sums JOIN items i ON i.id = sums.item
      WHERE i.container IS NOT NULL
      ORDER BY i.container, i.grade, i.lot
      """;

  private final EntityManager entities;

  TableBook(EntityManager entities) {
    this.entities = entities;
  }

  /** The lines of a show's table, by container, grade and lot; jars without a lot last. */
  @Transactional
  public List<TableLine> of(Show show) {
    List<?> rows =
        entities
            .createNativeQuery(SQL, Tuple.class)
            .setParameter("place", show.place())
            .getResultList();
    return rows.stream().map(row -> line((Tuple) row)).toList();
  }

  private static TableLine line(Tuple row) {
    String grade = row.get("grade", String.class);
    long packedOut = number(row, "packed_out");
    long received = number(row, "received");
    long given = number(row, "given");
    long back = number(row, "back");
    long broken = number(row, "broken");
    long sampled = number(row, "sampled");
    long sold = number(row, "sold");
    long onTable = number(row, "on_table");
    return new TableLine(
        row.get("container", String.class),
        row.get("lot", String.class),
        grade == null ? null : ColorClass.of(grade),
        packedOut,
        received,
        given,
        back,
        broken,
        sampled,
        sold,
        onTable - (packedOut + received - given - back - broken - sampled - sold),
        onTable);
  }

  private static long number(Tuple row, String column) {
    return ((Number) row.get(column)).longValue();
  }
}
