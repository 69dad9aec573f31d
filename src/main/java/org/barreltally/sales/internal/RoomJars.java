package org.barreltally.sales.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.Item;
import org.barreltally.measure.ColorClass;

/** Jars that stand in a room and may be sold. */
@ApplicationScoped
public class RoomJars {

  /** So many pieces of an item. */
  public record Standing(Item item, long pieces) {}

  private static final String STANDING =
      """
      SELECT i.id, i.lot, i.container, i.grams_each, i.grade, b.amount
      FROM balances b JOIN items i ON i.id = b.item JOIN lots l ON l.code = i.lot
      WHERE b.standing_at = :place AND b.container = :container AND NOT i.held AND b.amount > 0
        AND i.grade = coalesce(CAST(:grade AS text), i.grade)
      ORDER BY l.made_on, l.code
      """;

  private final EntityManager entities;

  RoomJars(EntityManager entities) {
    this.entities = entities;
  }

  /**
   * The lots of a size that are not held, the oldest first.
   *
   * @param grade null for any
   */
  public List<Standing> oldestFirst(String place, String container, ColorClass grade) {
    List<?> rows =
        entities
            .createNativeQuery(STANDING)
            .setParameter("place", place)
            .setParameter("container", container)
            .setParameter("grade", grade == null ? null : grade.code())
            .getResultList();
    return rows.stream()
        .map(Object[].class::cast)
        .map(
            c ->
                new Standing(
                    Item.jars(
                        (UUID) c[0],
                        (String) c[1],
                        (String) c[2],
                        (BigDecimal) c[3],
                        (String) c[4]),
                    (long) c[5]))
        .toList();
  }
}
