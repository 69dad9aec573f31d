package org.barreltally.shops.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.pricing.Money;
import org.barreltally.shops.Delivery;
import org.barreltally.shops.Paid;
import org.barreltally.shops.ShelfCount;

/**
 * What came to shops, was counted there and paid. What a reversed movement told counts no more and
 * is left out everywhere.
 */
@ApplicationScoped
public class ShelfLog {

  private static final String STANDS =
      " AND NOT EXISTS (SELECT 1 FROM movements r WHERE r.reverses = l.movement)";
  private static final String TO = " WHERE l.shop = :shop AND l.on_day <= :to";
  private static final String IN_ORDER = " ORDER BY l.on_day, l.id";

  private final EntityManager entities;
  private final ObjectMapper json;
  private final ShopRows shops;
  private final Days days;
  private final RecordedBy recordedBy;

  ShelfLog(
      EntityManager entities, ObjectMapper json, ShopRows shops, Days days, RecordedBy recordedBy) {
    this.entities = entities;
    this.json = json;
    this.shops = shops;
    this.days = days;
    this.recordedBy = recordedBy;
  }

  public void keep(Delivery delivery) {
    recorded(
            "INSERT INTO shop_deliveries (id, shop, direction, on_day, movement, lines, note,"
                + " recorded_at, recorded_by) VALUES (:id, :shop, :direction, :on, :movement,"
                + " CAST(:lines AS jsonb), CAST(:note AS text), :at, :by)",
            delivery.id(),
            delivery.shop(),
            delivery.on())
        .setParameter("direction", delivery.direction().code())
        .setParameter("movement", delivery.movement())
        .setParameter("lines", written(delivery.lines()))
        .setParameter("note", delivery.note())
        .executeUpdate();
  }

  public void keep(ShelfCount count, String by) {
    recorded(
            "INSERT INTO shop_counts (id, shop, on_day, movement, terms, lines, due, currency,"
                + " recorded_at, recorded_by) VALUES (:id, :shop, :on, CAST(:movement AS uuid),"
                + " :terms, CAST(:lines AS jsonb), :due, :currency, :at, :by)",
            count.id(),
            count.shop(),
            count.on())
        .setParameter("movement", count.movement() == null ? null : count.movement().toString())
        .setParameter("terms", count.terms().id())
        .setParameter("lines", written(count.lines()))
        .setParameter("due", count.due().amount())
        .setParameter("currency", count.due().currency())
        .executeUpdate();
    if (by != null && !by.isBlank()) {
      entities
          .createNativeQuery("INSERT INTO shop_counters (count, name) VALUES (:count, :name)")
          .setParameter("count", count.id())
          .setParameter("name", by.strip())
          .executeUpdate();
    }
  }

  public void keep(Paid paid) {
    recorded(
            "INSERT INTO shop_payments (id, shop, on_day, amount, currency, note, recorded_at,"
                + " recorded_by) VALUES (:id, :shop, :on, :amount, :currency,"
                + " CAST(:note AS text), :at, :by)",
            paid.id(),
            paid.shop(),
            paid.on())
        .setParameter("amount", paid.amount().amount())
        .setParameter("currency", paid.amount().currency())
        .setParameter("note", paid.note())
        .executeUpdate();
  }

  /** The day of the newest delivery or count of a shop that stands. */
  public Optional<LocalDate> newestDay(String shop) {
    Object newest =
        entities
            .createNativeQuery(
                "SELECT max(on_day) FROM (SELECT l.on_day FROM shop_deliveries l WHERE l.shop = :shop"
                    + STANDS
                    + " UNION ALL SELECT l.on_day FROM shop_counts l WHERE l.shop = :shop"
                    + STANDS
                    + ") AS days")
            .setParameter("shop", shop)
            .getSingleResult();
    return Optional.ofNullable(newest).map(LocalDate.class::cast);
  }

  /** Deliveries and fetchings up to a day, in their order. */
  public List<Delivery> deliveries(String shop, LocalDate to) {
    return rows(
            "SELECT l.id, l.direction, l.on_day, l.movement, l.note, CAST(l.lines AS text) AS told"
                + " FROM shop_deliveries l"
                + TO
                + STANDS
                + IN_ORDER,
            shop,
            to)
        .stream()
        .map(
            row ->
                new Delivery(
                    row.get("id", UUID.class),
                    shop,
                    Delivery.Direction.valueOf(
                        row.get("direction", String.class).toUpperCase(Locale.ROOT)),
                    day(row),
                    row.get("movement", UUID.class),
                    read(row, new TypeReference<List<Delivery.Line>>() {}),
                    row.get("note", String.class)))
        .toList();
  }

  /** Counts up to a day, in their order. */
  public List<ShelfCount> counts(String shop, LocalDate to) {
    return rows(
            "SELECT l.id, l.on_day, l.movement, l.terms, l.due, l.currency,"
                + " CAST(l.lines AS text) AS told FROM shop_counts l"
                + TO
                + STANDS
                + IN_ORDER,
            shop,
            to)
        .stream()
        .map(
            row ->
                ShelfCount.of(
                    row.get("id", UUID.class),
                    shop,
                    day(row),
                    row.get("movement", UUID.class),
                    shops.terms(row.get("terms", UUID.class)),
                    read(row, new TypeReference<List<ShelfCount.Line>>() {}),
                    Money.rounded(
                        row.get("due", BigDecimal.class), row.get("currency", String.class))))
        .toList();
  }

  /** Payments up to a day, in their order. */
  public List<Paid> payments(String shop, LocalDate to) {
    return rows(
            "SELECT l.id, l.on_day, l.amount, l.currency, l.note FROM shop_payments l"
                + TO
                + IN_ORDER,
            shop,
            to)
        .stream()
        .map(
            row ->
                new Paid(
                    row.get("id", UUID.class),
                    shop,
                    day(row),
                    Money.rounded(
                        row.get("amount", BigDecimal.class), row.get("currency", String.class)),
                    row.get("note", String.class)))
        .toList();
  }

  private Query recorded(String sql, UUID id, String shop, LocalDate on) {
    return entities
        .createNativeQuery(sql)
        .setParameter("id", id)
        .setParameter("shop", shop)
        .setParameter("on", on)
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user());
  }

  private List<Tuple> rows(String sql, String shop, LocalDate to) {
    List<?> rows =
        entities
            .createNativeQuery(sql, Tuple.class)
            .setParameter("shop", shop)
            .setParameter("to", to)
            .getResultList();
    return rows.stream().map(Tuple.class::cast).toList();
  }

  private static LocalDate day(Tuple row) {
    return row.get("on_day", LocalDate.class);
  }

  private String written(Object lines) {
    try {
      return json.writeValueAsString(lines);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("lines of a shop cannot be written", e);
    }
  }

  private <T> T read(Tuple row, TypeReference<T> type) {
    try {
      return json.readValue(row.get("told", String.class), type);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("lines of a shop cannot be read", e);
    }
  }
}
