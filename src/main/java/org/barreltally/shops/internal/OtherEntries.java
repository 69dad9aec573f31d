package org.barreltally.shops.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.ledger.Days;

/**
 * What the book moved on a shop's shelf without a delivery, fetching or count of it: jars carried,
 * written off or counted there as at any other place.
 */
@ApplicationScoped
public class OtherEntries {

  /** Jars of one lot and size, in pieces; below zero where they went. */
  public record Other(String container, String grade, String lot, LocalDate on, long amount) {}

  private static final String UP_TO =
      """
      SELECT i.container, i.grade, i.lot, m.happened_at, e.amount
      FROM entries e JOIN movements m ON m.id = e.movement JOIN items i ON i.id = e.item
      WHERE e.place = :place AND m.happened_at < :before AND i.container IS NOT NULL
        AND NOT EXISTS (SELECT 1 FROM shop_deliveries d WHERE d.movement IN (m.id, m.reverses))
        AND NOT EXISTS (SELECT 1 FROM shop_counts c WHERE c.movement IN (m.id, m.reverses))
      ORDER BY m.happened_at, m.id, e.line
      """;

  private final EntityManager entities;
  private final Days days;

  OtherEntries(EntityManager entities, Days days) {
    this.entities = entities;
    this.days = days;
  }

  /** Up to a day, in their order. */
  public List<Other> upTo(String place, LocalDate to) {
    List<?> rows =
        entities
            .createNativeQuery(UP_TO, Tuple.class)
            .setParameter("place", place)
            .setParameter("before", days.beginning(to.plusDays(1)))
            .getResultList();
    return rows.stream()
        .map(Tuple.class::cast)
        .map(
            row ->
                new Other(
                    row.get("container", String.class),
                    row.get("grade", String.class),
                    row.get("lot", String.class),
                    days.dateOf(row.get("happened_at", Instant.class)),
                    row.get("amount", Long.class)))
        .toList();
  }
}
