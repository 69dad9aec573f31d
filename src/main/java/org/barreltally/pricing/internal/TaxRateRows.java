package org.barreltally.pricing.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.sql.Date;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.pricing.ProductClass;
import org.barreltally.pricing.TaxRate;

/** The rows of {@code tax_rates}, which are only ever added. */
@ApplicationScoped
public class TaxRateRows {

  private static final String ADD =
      """
      INSERT INTO tax_rates (id, product_class, place, place_key, percent, valid_from, source,
        recorded_at, recorded_by)
      VALUES (:id, :class, :place, :key, :percent, :from, CAST(:source AS text), :at, :by)
      """;

  private final EntityManager entities;
  private final RecordedBy recordedBy;

  TaxRateRows(EntityManager entities, RecordedBy recordedBy) {
    this.entities = entities;
    this.recordedBy = recordedBy;
  }

  /**
   * @param key the place as rates are looked up by
   */
  public void add(TaxRate rate, String key) {
    entities
        .createNativeQuery(ADD)
        .setParameter("id", rate.id())
        .setParameter("class", rate.productClass().code())
        .setParameter("place", rate.place())
        .setParameter("key", key)
        .setParameter("percent", rate.percent())
        .setParameter("from", rate.from())
        .setParameter("source", rate.source())
        .setParameter("at", rate.enteredAt())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
  }

  /** The rate of exactly that place that holds on a day. */
  public Optional<TaxRate> holding(ProductClass productClass, String key, LocalDate on) {
    return read(
            query(
                    "WHERE product_class = :class AND place_key = :key AND valid_from <= :on"
                        + " ORDER BY valid_from DESC, id DESC")
                .setParameter("class", productClass.code())
                .setParameter("key", key)
                .setParameter("on", on)
                .setMaxResults(1))
        .stream()
        .findFirst();
  }

  public Optional<TaxRate> find(UUID id) {
    return read(query("WHERE id = :id").setParameter("id", id)).stream().findFirst();
  }

  public List<TaxRate> list(UUID after, int limit) {
    return read(
        query("WHERE id > :after ORDER BY id")
            .setParameter("after", after == null ? new UUID(0, 0) : after)
            .setMaxResults(limit));
  }

  private Query query(String where) {
    return entities.createNativeQuery("SELECT * FROM tax_rates " + where, Tuple.class);
  }

  private static List<TaxRate> read(Query query) {
    List<?> rows = query.getResultList();
    return rows.stream().map(Tuple.class::cast).map(TaxRateRows::rate).toList();
  }

  private static TaxRate rate(Tuple row) {
    Object from = row.get("valid_from");
    return new TaxRate(
        row.get("id", UUID.class),
        ProductClass.of(row.get("product_class", String.class)),
        row.get("place", String.class),
        row.get("percent", BigDecimal.class).stripTrailingZeros(),
        from instanceof Date date ? date.toLocalDate() : (LocalDate) from,
        row.get("source", String.class),
        row.get("recorded_at", Instant.class));
  }
}
