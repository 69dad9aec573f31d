package org.barreltally.sales.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;
import org.hibernate.Session;

/** Keeps what was told of sales: their ids, their words, and what of it clashes. */
@ApplicationScoped
public class SaleBook {

  /** Sorted, so that two batches with the same ids never wait for each other in a ring. */
  private static final String CLAIM =
      "INSERT INTO sale_ids (id) SELECT DISTINCT id FROM unnest(?::uuid[]) AS i (id) ORDER BY id"
          + " ON CONFLICT DO NOTHING RETURNING id";

  private static final String CONFLICT =
      """
      INSERT INTO sale_conflicts (id, sale, place, said, said_hash, recorded_at, recorded_by)
      VALUES (:id, :sale, :place, :said, :hash, :at, :by) ON CONFLICT DO NOTHING
      """;

  private static final String CAME =
      """
      SELECT DISTINCT i.id, i.container, i.grade FROM balances b JOIN items i ON i.id = b.item
      WHERE b.place = :place AND i.container IS NOT NULL AND i.lot IS NOT NULL AND (b.amount > 0
        OR EXISTS (SELECT 1 FROM entries e WHERE e.place = b.place AND e.item = b.item AND e.amount > 0))
      """;

  private final EntityManager entities;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  SaleBook(EntityManager entities, Days days, Ids ids, RecordedBy recordedBy) {
    this.entities = entities;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  /**
   * Takes ids for this transaction. Waits while another has one of them in hand.
   *
   * @return those that nobody had taken before
   */
  public Set<UUID> claim(Collection<UUID> wanted) {
    entities.flush();
    return entities
        .unwrap(Session.class)
        .doReturningWork(
            connection -> {
              try (PreparedStatement claim = connection.prepareStatement(CLAIM)) {
                claim.setArray(1, connection.createArrayOf("uuid", wanted.toArray()));
                Set<UUID> fresh = new HashSet<>();
                try (ResultSet rows = claim.executeQuery()) {
                  while (rows.next()) {
                    fresh.add(rows.getObject(1, UUID.class));
                  }
                }
                return fresh;
              }
            });
  }

  /** What was said under ids, by id. */
  public Map<UUID, String> said(Collection<UUID> sales) {
    Map<UUID, String> said = new HashMap<>();
    if (!sales.isEmpty()) {
      List<?> rows =
          entities
              .createNativeQuery("SELECT id, said FROM sales WHERE id IN (:ids)")
              .setParameter("ids", sales)
              .getResultList();
      rows.stream()
          .map(Object[].class::cast)
          .forEach(row -> said.put((UUID) row[0], (String) row[1]));
    }
    return said;
  }

  /** Keeps another telling of a sale's id, once however often it comes. */
  public void conflict(UUID sale, String place, String said) {
    entities
        .createNativeQuery(CONFLICT)
        .setParameter("id", ids.next())
        .setParameter("sale", sale)
        .setParameter("place", place)
        .setParameter("said", said)
        .setParameter("hash", hash(said))
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
  }

  /** Which of some codes are lots. */
  public Set<String> known(Collection<String> lots) {
    if (lots.isEmpty()) {
      return Set.of();
    }
    List<?> rows =
        entities
            .createNativeQuery("SELECT code FROM lots WHERE code IN (:lots)")
            .setParameter("lots", lots)
            .getResultList();
    Set<String> known = new HashSet<>();
    rows.forEach(row -> known.add((String) row));
    return known;
  }

  /** Which jars came to a place. */
  public PlaceJars came(String place) {
    return new PlaceJars(
        entities.createNativeQuery(CAME).setParameter("place", place).getResultList());
  }

  /** Keeps sales together with the movements that they made. */
  public void keep(List<SaleRow> sales, Bundle write) {
    SaleRow.add(sales, days.now(), recordedBy.user(), write);
  }

  private static byte[] hash(String said) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(said.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
