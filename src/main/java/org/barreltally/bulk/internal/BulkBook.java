package org.barreltally.bulk.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.bulk.BulkSale;
import org.barreltally.bulk.SellBulk;
import org.barreltally.bulk.SoldBulk;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;

/** Keeps bulk sales as they were given, and the names of buyers apart from them. */
@ApplicationScoped
public class BulkBook {

  private static final String SELECT =
      """
      SELECT s.id, CAST(s.ticket AS text) AS ticket, s.recorded_at, b.name, b.details,
        EXISTS (SELECT 1 FROM movements r WHERE r.reverses = s.movement) AS taken_back
      FROM bulk_sales s JOIN bulk_buyers b ON b.id = s.buyer
      """;

  private static final String KEEP =
      """
      INSERT INTO bulk_sales (id, tag, lot, buyer, movement, sold_on, amount, currency, ticket,
        recorded_at, recorded_by)
      VALUES (:id, :tag, :lot, :buyer, :movement, :on, :amount, :currency, CAST(:ticket AS jsonb),
        :at, :by)
      """;

  private final EntityManager entities;
  private final ObjectMapper json;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  BulkBook(EntityManager entities, ObjectMapper json, Days days, Ids ids, RecordedBy recordedBy) {
    this.entities = entities;
    this.json = json;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  /** The buyer of that name, made known if new; details given anew replace the old ones. */
  public UUID buyer(SellBulk.Buyer said) {
    return (UUID)
        entities
            .createNativeQuery(
                "INSERT INTO bulk_buyers AS b (id, name, details)"
                    + " VALUES (:id, :name, CAST(:details AS text)) ON CONFLICT (name) DO UPDATE"
                    + " SET details = coalesce(excluded.details, b.details) RETURNING id")
            .setParameter("id", ids.next())
            .setParameter("name", said.name().strip())
            .setParameter("details", said.details())
            .getSingleResult();
  }

  public void keep(BulkSale sale) {
    try {
      entities
          .createNativeQuery(KEEP)
          .setParameter("id", sale.id())
          .setParameter("tag", sale.tag())
          .setParameter("lot", sale.lot())
          .setParameter("buyer", sale.buyer())
          .setParameter("movement", sale.movement())
          .setParameter("on", sale.on())
          .setParameter("amount", sale.amount().amount())
          .setParameter("currency", sale.amount().currency())
          .setParameter("ticket", json.writeValueAsString(sale))
          .setParameter("at", days.now())
          .setParameter("by", recordedBy.user())
          .executeUpdate();
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a bulk sale cannot be written", e);
    }
  }

  public Optional<SoldBulk> find(UUID id) {
    return read("WHERE s.id = :id", Map.of("id", id), 1).stream().findFirst();
  }

  /** In the order they were recorded, after one of them (or null), at most so many. */
  public List<SoldBulk> list(UUID after, int limit) {
    String where = after == null ? "" : "WHERE s.id > :after";
    return read(where, after == null ? Map.of() : Map.of("after", after), limit);
  }

  private List<SoldBulk> read(String where, Map<String, Object> parameters, int limit) {
    Query query =
        entities
            .createNativeQuery(SELECT + where + " ORDER BY s.id", Tuple.class)
            .setMaxResults(limit);
    parameters.forEach(query::setParameter);
    List<?> rows = query.getResultList();
    return rows.stream().map(Tuple.class::cast).map(this::sold).toList();
  }

  private SoldBulk sold(Tuple row) {
    try {
      return new SoldBulk(
          json.readValue(row.get("ticket", String.class), BulkSale.class),
          row.get("recorded_at", Instant.class),
          row.get("name", String.class),
          row.get("details", String.class),
          row.get("taken_back", Boolean.class));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a bulk sale cannot be read", e);
    }
  }
}
