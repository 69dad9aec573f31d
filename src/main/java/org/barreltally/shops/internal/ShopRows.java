package org.barreltally.shops.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.shops.MissingRule;
import org.barreltally.shops.OpenShop;
import org.barreltally.shops.Shop;
import org.barreltally.shops.Terms;

/** Shops and the terms agreed with them. */
@ApplicationScoped
public class ShopRows {

  private static final String TERMS_COLUMNS =
      "t.id, t.valid_from, t.commission_percent, t.missing, t.shop_bears_percent, t.price_list";

  private static final String SHOPS =
      """
      SELECT s.code, s.name, s.details, s.place, s.recorded_at, %s
      FROM shops s JOIN LATERAL (
        SELECT * FROM shop_terms t WHERE t.shop = s.code
        ORDER BY t.valid_from > :today, CASE WHEN t.valid_from > :today THEN t.valid_from END,
          t.valid_from DESC, t.id DESC
        LIMIT 1) t ON true
      """
          .formatted(TERMS_COLUMNS);

  private final EntityManager entities;
  private final Days days;
  private final RecordedBy recordedBy;

  ShopRows(EntityManager entities, Days days, RecordedBy recordedBy) {
    this.entities = entities;
    this.days = days;
    this.recordedBy = recordedBy;
  }

  public Optional<Shop> find(String code) {
    return read(" WHERE s.code = :key", code, 1).stream().findFirst();
  }

  /** By code, after a code (or null), at most so many. */
  public List<Shop> list(String after, int limit) {
    return read(" WHERE s.code > :key ORDER BY s.code", after == null ? "" : after, limit);
  }

  /** Lets nobody else bring jars to, count or settle this shop until the transaction ends. */
  public void lock(String code) {
    entities
        .createNativeQuery("SELECT code FROM shops WHERE code = :code FOR UPDATE")
        .setParameter("code", code)
        .getResultList();
  }

  public boolean taken(String code, String name) {
    return !entities
        .createNativeQuery("SELECT 1 FROM shops WHERE code = :code OR name = :name")
        .setParameter("code", code)
        .setParameter("name", name)
        .getResultList()
        .isEmpty();
  }

  public void add(String code, OpenShop said, String place) {
    entities
        .createNativeQuery(
            "INSERT INTO shops (code, name, details, place, recorded_at, recorded_by)"
                + " VALUES (:code, :name, CAST(:details AS text), :place, :at, :by)")
        .setParameter("code", code)
        .setParameter("name", said.name().strip())
        .setParameter("details", said.details())
        .setParameter("place", place)
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
  }

  /**
   * @param details null for none
   */
  public void describe(String shop, String details) {
    entities
        .createNativeQuery("UPDATE shops SET details = CAST(:details AS text) WHERE code = :code")
        .setParameter("details", details)
        .setParameter("code", shop)
        .executeUpdate();
  }

  public void agree(String shop, Terms terms) {
    entities
        .createNativeQuery(
            "INSERT INTO shop_terms (id, shop, valid_from, commission_percent, missing,"
                + " shop_bears_percent, price_list, recorded_at, recorded_by)"
                + " VALUES (:id, :shop, :from, :commission, :missing, :bears,"
                + " CAST(:list AS uuid), :at, :by)")
        .setParameter("id", terms.id())
        .setParameter("shop", shop)
        .setParameter("from", terms.validFrom())
        .setParameter("commission", terms.commissionPercent())
        .setParameter("missing", terms.missing().code())
        .setParameter("bears", terms.shopBearsPercent())
        .setParameter("list", terms.priceList() == null ? null : terms.priceList().toString())
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
  }

  /** The terms that hold on a day; the first ones hold for what was before them as well. */
  public Terms terms(String shop, LocalDate on) {
    return terms(
            " WHERE t.shop = :shop ORDER BY t.valid_from > :on,"
                + " CASE WHEN t.valid_from > :on THEN t.valid_from END, t.valid_from DESC, t.id DESC",
            Map.of("shop", shop, "on", on))
        .get(0);
  }

  /** The terms of that id, which a count names. */
  public Terms terms(UUID id) {
    return terms(" WHERE t.id = :id", Map.of("id", id)).get(0);
  }

  private List<Terms> terms(String condition, Map<String, Object> parameters) {
    var query =
        entities
            .createNativeQuery(
                "SELECT " + TERMS_COLUMNS + " FROM shop_terms t" + condition, Tuple.class)
            .setMaxResults(1);
    parameters.forEach(query::setParameter);
    List<?> rows = query.getResultList();
    return rows.stream().map(Tuple.class::cast).map(ShopRows::terms).toList();
  }

  private List<Shop> read(String condition, String key, int limit) {
    List<?> rows =
        entities
            .createNativeQuery(SHOPS + condition, Tuple.class)
            .setParameter("today", days.today())
            .setParameter("key", key)
            .setMaxResults(limit)
            .getResultList();
    return rows.stream()
        .map(Tuple.class::cast)
        .map(
            row ->
                new Shop(
                    row.get("code", String.class),
                    row.get("name", String.class),
                    row.get("details", String.class),
                    row.get("place", String.class),
                    row.get("recorded_at", Instant.class),
                    terms(row)))
        .toList();
  }

  private static Terms terms(Tuple row) {
    return new Terms(
        row.get("id", UUID.class),
        row.get("valid_from", LocalDate.class),
        row.get("commission_percent", BigDecimal.class),
        MissingRule.of(row.get("missing", String.class)),
        row.get("shop_bears_percent", BigDecimal.class),
        row.get("price_list", UUID.class));
  }
}
