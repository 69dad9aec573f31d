package org.barreltally.sales.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.util.Collection;
import java.util.List;
import java.util.UUID;

/** What the ledger tells of the jars at tables, apart from settlements. */
@ApplicationScoped
public class TableFacts {

  /**
   * Jars of one item at one place.
   *
   * @param lot null where nobody wrote it down
   * @param left what came less what went, settlements not counted
   * @param sold less what buyers brought back
   * @param settled what settlements brought (above zero) or took
   */
  public record Standing(
      String place,
      UUID item,
      String container,
      String lot,
      String grade,
      long left,
      long sold,
      long settled) {}

  /** Jars without lot that went from one table to another, in all. */
  public record Way(String from, String to, String container, String grade, long count) {}

  /** A reversal counts with the kind it takes back. */
  private static final String STANDING =
      """
      SELECT e.place, i.id AS item, i.container, i.lot, i.grade,
        CAST(coalesce(sum(e.amount) FILTER (WHERE k.kind <> 'settlement'), 0) AS bigint) AS left_there,
        CAST(coalesce(-sum(e.amount) FILTER (WHERE k.kind IN ('sale', 'sale-return')), 0) AS bigint)
          AS sold,
        CAST(coalesce(sum(e.amount) FILTER (WHERE k.kind = 'settlement'), 0) AS bigint) AS settled
      FROM entries e JOIN items i ON i.id = e.item
        JOIN movements m ON m.id = e.movement LEFT JOIN movements o ON o.id = m.reverses
        CROSS JOIN LATERAL (SELECT coalesce(o.kind, m.kind) AS kind) AS k
      WHERE e.place IN (:places) AND i.container IS NOT NULL
      GROUP BY e.place, i.id ORDER BY i.container, e.place, i.lot, i.grade
      """;

  /** Begins at the entries of the places, so that it reads no more of a long history. */
  private static final String WAYS =
      """
      WITH carried AS (
        SELECT DISTINCT e.movement FROM entries e JOIN items i ON i.id = e.item
        WHERE e.place IN (:places) AND i.lot IS NULL)
      SELECT a.place AS from_place, b.place AS to_place, i.container, i.grade,
        CAST(sum(-a.amount) AS bigint) AS pieces
      FROM carried c JOIN entries a ON a.movement = c.movement
        JOIN entries b ON b.movement = a.movement AND b.item = a.item AND b.place <> a.place
        JOIN items i ON i.id = a.item
        JOIN movements m ON m.id = a.movement LEFT JOIN movements o ON o.id = m.reverses
      WHERE i.lot IS NULL AND coalesce(o.kind, m.kind) = 'table-transfer'
        AND (a.amount < 0) = (m.reverses IS NULL)
      GROUP BY a.place, b.place, i.container, i.grade HAVING sum(-a.amount) > 0
      ORDER BY a.place, b.place, i.container, i.grade
      """;

  private final EntityManager entities;

  TableFacts(EntityManager entities) {
    this.entities = entities;
  }

  public List<Standing> standing(Collection<String> places) {
    List<?> rows =
        entities
            .createNativeQuery(STANDING, Tuple.class)
            .setParameter("places", places)
            .getResultList();
    return rows.stream()
        .map(Tuple.class::cast)
        .map(
            row ->
                new Standing(
                    row.get("place", String.class),
                    row.get("item", UUID.class),
                    row.get("container", String.class),
                    row.get("lot", String.class),
                    row.get("grade", String.class),
                    row.get("left_there", Long.class),
                    row.get("sold", Long.class),
                    row.get("settled", Long.class)))
        .toList();
  }

  /** Ways that begin or end at one of the places; what was taken back is not in them. */
  public List<Way> ways(Collection<String> places) {
    List<?> rows =
        entities
            .createNativeQuery(WAYS, Tuple.class)
            .setParameter("places", places)
            .getResultList();
    return rows.stream()
        .map(Tuple.class::cast)
        .map(
            row ->
                new Way(
                    row.get("from_place", String.class),
                    row.get("to_place", String.class),
                    row.get("container", String.class),
                    row.get("grade", String.class),
                    row.get("pieces", Long.class)))
        .toList();
  }
}
