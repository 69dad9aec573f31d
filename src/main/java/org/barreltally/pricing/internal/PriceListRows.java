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
import org.barreltally.measure.ColorClass;
import org.barreltally.pricing.Audience;
import org.barreltally.pricing.Deal;
import org.barreltally.pricing.Money;
import org.barreltally.pricing.PriceLine;
import org.barreltally.pricing.PriceList;
import org.barreltally.pricing.PriceListSummary;
import org.barreltally.pricing.ProductClass;
import org.barreltally.pricing.Standing;

/** Reads price lists. A list never changes once it is stored, so it is kept when it was read. */
@ApplicationScoped
public class PriceListRows {

  /** Holds on the day, unless a later version of its family does. */
  private static final String HOLDING =
      """
      SELECT l.id FROM price_lists l LEFT JOIN price_list_withdrawals w ON w.list = l.id
      WHERE %s AND l.valid_from <= :on AND (l.valid_to IS NULL OR l.valid_to >= :on)
        AND (w.withdrawn_on IS NULL OR w.withdrawn_on > :on)
        AND NOT EXISTS (
          SELECT 1 FROM price_lists n LEFT JOIN price_list_withdrawals x ON x.list = n.id
          WHERE n.family = l.family AND n.version > l.version AND n.valid_from <= :on
            AND (x.withdrawn_on IS NULL OR x.withdrawn_on > :on))
      ORDER BY l.valid_from DESC, l.id DESC
      """;

  private static final String SUMMARIES =
      """
      SELECT l.*, n.id AS replaced_by, w.withdrawn_on,
        (SELECT count(*) FROM price_lines p WHERE p.list = l.id) AS lines,
        (SELECT count(*) FROM price_deals d WHERE d.list = l.id) AS deals
      FROM price_lists l LEFT JOIN price_lists n ON n.replaces = l.id
        LEFT JOIN price_list_withdrawals w ON w.list = l.id
      WHERE l.id > :after AND (CAST(:audience AS text) IS NULL OR l.audience = :audience)
      ORDER BY l.id
      """;

  private static final String STANDING =
      """
      SELECT n.id, n.valid_from, w.withdrawn_on, w.reason
      FROM price_lists l LEFT JOIN price_lists n ON n.replaces = l.id
        LEFT JOIN price_list_withdrawals w ON w.list = l.id
      WHERE l.id = :id
      """;

  private final EntityManager entities;
  private final KnownLists known;

  PriceListRows(EntityManager entities, KnownLists known) {
    this.entities = entities;
    this.known = known;
  }

  public Optional<PriceList> find(UUID id) {
    Optional<PriceList> list = known.find(id);
    if (list.isPresent()) {
      return list;
    }
    Optional<PriceList> read =
        tuples(query("SELECT * FROM price_lists WHERE id = :id").setParameter("id", id)).stream()
            .findFirst()
            .map(this::list);
    read.ifPresent(known::keep);
    return read;
  }

  public Standing standing(UUID id) {
    Tuple row = tuples(query(STANDING).setParameter("id", id)).get(0);
    LocalDate withdrawn = day(row, "withdrawn_on");
    return new Standing(
        row.get("id", UUID.class),
        day(row, "valid_from"),
        withdrawn == null
            ? null
            : new Standing.Withdrawn(withdrawn, row.get("reason", String.class)));
  }

  public Optional<PriceList> current(Audience audience, LocalDate on) {
    return first(
        query(HOLDING.formatted("l.audience = :audience"))
            .setParameter("audience", audience.code())
            .setParameter("on", on));
  }

  public Optional<PriceList> holding(UUID family, LocalDate on) {
    return first(
        query(HOLDING.formatted("l.family = :family"))
            .setParameter("family", family)
            .setParameter("on", on));
  }

  public List<PriceListSummary> list(Audience audience, UUID after, int limit) {
    return tuples(
            query(SUMMARIES)
                .setParameter("after", after == null ? new UUID(0, 0) : after)
                .setParameter("audience", audience == null ? null : audience.code())
                .setMaxResults(limit))
        .stream()
        .map(PriceListRows::summary)
        .toList();
  }

  private Optional<PriceList> first(Query holding) {
    return tuples(holding.setMaxResults(1)).stream()
        .findFirst()
        .flatMap(row -> find(row.get("id", UUID.class)));
  }

  private PriceList list(Tuple row) {
    UUID id = row.get("id", UUID.class);
    String currency = row.get("currency", String.class);
    return new PriceList(
        id,
        row.get("name", String.class),
        Audience.of(row.get("audience", String.class)),
        day(row, "valid_from"),
        day(row, "valid_to"),
        currency,
        row.get("tax_included", Boolean.class),
        row.get("family", UUID.class),
        row.get("version", Integer.class),
        row.get("replaces", UUID.class),
        rowsOf("price_lines", id).stream().map(line -> line(line, currency)).toList(),
        rowsOf("price_deals", id).stream().map(deal -> deal(deal, currency)).toList(),
        row.get("recorded_at", Instant.class));
  }

  private List<Tuple> rowsOf(String table, UUID list) {
    return tuples(
        query("SELECT * FROM " + table + " WHERE list = :list ORDER BY line")
            .setParameter("list", list));
  }

  private static PriceLine line(Tuple row, String currency) {
    return new PriceLine(
        row.get("container", String.class),
        grade(row),
        money(row, currency),
        ProductClass.of(row.get("product_class", String.class)));
  }

  private static Deal deal(Tuple row, String currency) {
    return new Deal(
        row.get("container", String.class),
        grade(row),
        row.get("pieces", Integer.class),
        money(row, currency));
  }

  private static PriceListSummary summary(Tuple row) {
    return new PriceListSummary(
        row.get("id", UUID.class),
        row.get("name", String.class),
        Audience.of(row.get("audience", String.class)),
        day(row, "valid_from"),
        day(row, "valid_to"),
        row.get("currency", String.class),
        row.get("version", Integer.class),
        row.get("replaces", UUID.class),
        row.get("replaced_by", UUID.class),
        day(row, "withdrawn_on"),
        ((Number) row.get("lines")).intValue(),
        ((Number) row.get("deals")).intValue());
  }

  private static ColorClass grade(Tuple row) {
    String code = row.get("grade", String.class);
    return code == null ? null : ColorClass.of(code);
  }

  private static Money money(Tuple row, String currency) {
    return new Money(row.get("amount", BigDecimal.class), currency);
  }

  /** A date as the driver gives it. */
  private static LocalDate day(Tuple row, String column) {
    Object day = row.get(column);
    return day instanceof Date date ? date.toLocalDate() : (LocalDate) day;
  }

  private Query query(String sql) {
    return entities.createNativeQuery(sql, Tuple.class);
  }

  private static List<Tuple> tuples(Query query) {
    List<?> rows = query.getResultList();
    return rows.stream().map(Tuple.class::cast).toList();
  }
}
