package org.barreltally.gifts.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.barreltally.gifts.Buyer;
import org.barreltally.gifts.CheckedRecipient;
import org.barreltally.gifts.Delivery;
import org.barreltally.gifts.GiftLine;
import org.barreltally.gifts.OrderHead;
import org.barreltally.gifts.RecipientState;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;
import org.hibernate.Session;

/** Orders and their recipients in the database, without what was done since. */
@ApplicationScoped
public class OrderRows {

  private static final String LINE =
      """
      INSERT INTO gift_lines (order_id, n, box, boxes, price, delivery, postage, carrier, wanted_by,
        send_by, latest_send, state) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 'confirmed')
      """;

  private static final String ADDRESS =
      "INSERT INTO gift_addresses (order_id, n, name, address, card) VALUES (?, ?, ?, ?::jsonb, ?)";

  private final EntityManager entities;
  private final ObjectMapper json;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  OrderRows(EntityManager entities, ObjectMapper json, Days days, Ids ids, RecordedBy recordedBy) {
    this.entities = entities;
    this.json = json;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  /** A new order of a buyer, still without recipients. */
  public UUID add(Buyer buyer, String currency, BigDecimal depositPercent) {
    UUID buyerId = ids.next();
    entities
        .createNativeQuery(
            "INSERT INTO gift_buyers (id, name, details)"
                + " VALUES (:id, :name, CAST(:details AS jsonb))")
        .setParameter("id", buyerId)
        .setParameter("name", buyer.name().strip())
        .setParameter("details", written(buyer))
        .executeUpdate();
    UUID id = ids.next();
    entities
        .createNativeQuery(
            "INSERT INTO gift_orders (id, buyer, currency, deposit_percent, version, recorded_at,"
                + " recorded_by) VALUES (:id, :buyer, :currency, :percent, 1, :at, :by)")
        .setParameter("id", id)
        .setParameter("buyer", buyerId)
        .setParameter("currency", currency)
        .setParameter("percent", depositPercent)
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
    return id;
  }

  /** Adds recipients, numbered from {@code first}. */
  public void add(UUID order, int first, List<CheckedRecipient> recipients) {
    entities.flush();
    entities
        .unwrap(Session.class)
        .doWork(
            connection -> {
              try (PreparedStatement lines = connection.prepareStatement(LINE);
                  PreparedStatement addresses = connection.prepareStatement(ADDRESS)) {
                int n = first;
                for (CheckedRecipient recipient : recipients) {
                  line(lines, order, n, recipient);
                  addresses.setObject(1, order);
                  addresses.setInt(2, n);
                  addresses.setString(3, recipient.name());
                  addresses.setString(
                      4, recipient.address() == null ? null : written(recipient.address()));
                  addresses.setString(5, recipient.card());
                  addresses.addBatch();
                  n++;
                }
                lines.executeBatch();
                addresses.executeBatch();
              }
            });
  }

  private static void line(PreparedStatement row, UUID order, int n, CheckedRecipient said)
      throws SQLException {
    row.setObject(1, order);
    row.setInt(2, n);
    row.setObject(3, said.box().id());
    row.setInt(4, said.count());
    row.setBigDecimal(5, said.box().price().amount());
    row.setString(6, said.delivery().code());
    row.setBigDecimal(7, said.postage() == null ? null : said.postage().amount());
    row.setString(8, said.carrier());
    row.setObject(9, said.wantedBy(), Types.DATE);
    row.setObject(10, said.sendBy(), Types.DATE);
    row.setObject(11, said.latestSend(), Types.DATE);
    row.addBatch();
  }

  /** The order, kept from being changed by others until the transaction ends. */
  public Optional<OrderHead> locked(UUID id) {
    return heads("WHERE id = :id FOR UPDATE", id, 1).findFirst();
  }

  public Optional<OrderHead> find(UUID id) {
    return heads("WHERE id = :id", id, 1).findFirst();
  }

  /** In the order they were recorded, after one of them (or null), at most so many. */
  public List<OrderHead> list(UUID after, int limit) {
    UUID from = after == null ? new UUID(0, 0) : after;
    return heads("WHERE id > :id ORDER BY id", from, limit).toList();
  }

  private Stream<OrderHead> heads(String where, UUID id, int limit) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT id, buyer, currency, deposit_percent, version, recorded_at FROM gift_orders"
                    + " "
                    + where,
                Tuple.class)
            .setParameter("id", id)
            .setMaxResults(limit)
            .getResultList();
    return rows.stream()
        .map(Tuple.class::cast)
        .map(
            row ->
                new OrderHead(
                    row.get("id", UUID.class),
                    row.get("buyer", UUID.class),
                    row.get("currency", String.class),
                    row.get("deposit_percent", BigDecimal.class),
                    row.get("version", Long.class),
                    row.get("recorded_at", Instant.class)));
  }

  /** Notes that a locked order was changed. */
  public void changed(UUID id) {
    entities
        .createNativeQuery("UPDATE gift_orders SET version = version + 1 WHERE id = :id")
        .setParameter("id", id)
        .executeUpdate();
  }

  /** Recipients by order, in the sequence of their numbers; nothing of an order that has none. */
  public Map<UUID, List<GiftLine>> lines(Map<UUID, OrderHead> orders) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT * FROM gift_lines WHERE order_id IN (:ids) ORDER BY n", Tuple.class)
            .setParameter("ids", orders.keySet())
            .getResultList();
    return Row.byOrder(
        rows.stream().map(row -> new Row((Tuple) row)).toList(),
        row -> line(row, orders.get(row.id("order_id")).currency()));
  }

  private static GiftLine line(Row row, String currency) {
    return new GiftLine(
        row.whole("n"),
        row.id("box"),
        row.whole("boxes"),
        row.money("price", currency),
        Delivery.of(row.text("delivery")),
        row.money("postage", currency),
        row.text("carrier"),
        row.day("wanted_by"),
        row.day("send_by"),
        row.day("latest_send"),
        RecipientState.of(row.text("state")));
  }

  private String written(Object said) {
    try {
      return json.writeValueAsString(said);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a gift order cannot be written", e);
    }
  }
}
