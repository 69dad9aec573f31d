package org.barreltally.cost.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Days;
import org.barreltally.pricing.Money;

/**
 * What was taken for goods in a year of the book, by size and by order. Tax is left out. What was
 * taken back in the year counts below zero.
 */
@ApplicationScoped
public class TakingsRows {

  /**
   * A line of a sale, a refund, a shop's count or a bulk sale.
   *
   * @param what {@code sale, refund, shop, bulk}
   * @param order id of the sale, code of the shop, id of the bulk sale
   * @param entry tells apart what one order was told in
   * @param channel of a sale; null for others
   * @param whole what the entry came to without tax, below zero where it was taken back
   * @param container null for syrup in bulk
   * @param weight by which the entry is shared out over its lines
   */
  public record Taken(
      String what,
      String order,
      String entry,
      String channel,
      LocalDate on,
      BigDecimal whole,
      String container,
      BigDecimal weight) {}

  /** Which order a movement is of. */
  public record Order(String what, String name, String channel, LocalDate on) {}

  private static final String TAKEN =
      """
      WITH booked AS (
        SELECT m.id, coalesce(m.reverses, m.id) AS told, CASE WHEN m.reverses IS NULL THEN 1 ELSE -1 END AS sign
        FROM movements m WHERE m.book_year = ?)
      SELECT 'sale', s.id::text, b.id::text, s.channel, s.happened_at, b.sign * (s.total - s.tax),
        l.container, coalesce(l.amount, 0), s.currency
      FROM booked b JOIN sales s ON s.movement = b.told JOIN sale_lines l ON l.sale = s.id
      WHERE s.total IS NOT NULL
      UNION ALL
      SELECT 'refund', t.sale::text, b.id::text, s.channel, s.happened_at, -b.sign * t.refund,
        i.container, l.pieces, t.currency
      FROM booked b JOIN sale_returns t ON t.movement = b.told JOIN sales s ON s.id = t.sale
        JOIN sale_return_lines l ON l.return_id = t.id JOIN items i ON i.id = l.item
      WHERE t.refund IS NOT NULL
      UNION ALL
      SELECT 'shop', c.shop, b.id::text, NULL, c.recorded_at, b.sign * c.due,
        l ->> 'container', CAST(l #>> '{due,amount}' AS numeric), c.currency
      FROM booked b JOIN shop_counts c ON c.movement = b.told
        CROSS JOIN jsonb_array_elements(c.lines) l
      UNION ALL
      SELECT 'bulk', s.id::text, b.id::text, NULL, s.recorded_at, b.sign * s.amount, NULL, 1,
        s.currency
      FROM booked b JOIN bulk_sales s ON s.movement = b.told
      ORDER BY 3, 7, 8
      """;

  private static final String ORDERS =
      """
      WITH told AS (
        SELECT s.movement, 'sale' AS what, s.id::text AS name, s.channel, s.happened_at AS at
          FROM sales s
        UNION ALL SELECT t.movement, 'sale', s.id::text, s.channel, s.happened_at
          FROM sale_returns t JOIN sales s ON s.id = t.sale
        UNION ALL SELECT c.movement, 'shop', c.shop, NULL, NULL FROM shop_counts c
          WHERE c.movement IS NOT NULL
        UNION ALL SELECT b.movement, 'bulk', b.id::text, NULL, b.recorded_at FROM bulk_sales b
        UNION ALL SELECT DISTINCT g.movement, 'gift', g.order_id::text, NULL, o.recorded_at
          FROM gift_steps g JOIN gift_orders o ON o.id = g.order_id WHERE g.movement IS NOT NULL)
      SELECT m.id, t.what, t.name, t.channel, t.at
      FROM told t JOIN movements m ON m.id = t.movement WHERE m.book_year = ?
      UNION ALL SELECT m.id, t.what, t.name, t.channel, t.at
      FROM told t JOIN movements m ON m.reverses = t.movement WHERE m.book_year = ?
      """;

  private static final String OF_SHOWS =
      """
      SELECT show, sum(amount) FROM costs c WHERE show IS NOT NULL AND currency = ?
        AND c.book_year <= ? AND NOT EXISTS (SELECT 1 FROM cost_reversals r
          WHERE r.cost = c.id AND r.book_year <= ?) GROUP BY show
      """;

  /** What settlements came to by a time, each in the newest. */
  private static final String SETTLED =
      """
      SELECT DISTINCT ON (s.show) s.show,
        CAST(s.told #>> '{takings,amount}' AS numeric)
          - coalesce(CAST(s.told #>> '{takenIn,tax,amount}' AS numeric), 0),
        CAST(s.told #>> '{fee,amount}' AS numeric), CAST(s.told #>> '{travel,amount}' AS numeric),
        CAST(s.told #>> '{helper,amount}' AS numeric), s.told #>> '{takings,currency}'
      FROM show_settlements s WHERE s.recorded_at <= ?
      ORDER BY s.show, s.recorded_at DESC, s.id DESC
      """;

  private static final String BILLED =
      """
      SELECT l.order_id, sum(l.boxes * l.price) FROM gift_lines l
        JOIN gift_orders o ON o.id = l.order_id
        LEFT JOIN LATERAL (SELECT s.becomes FROM gift_steps s
          WHERE s.order_id = l.order_id AND s.n = l.n AND s.becomes IS NOT NULL
            AND s.recorded_at <= ? ORDER BY s.recorded_at DESC, s.id DESC LIMIT 1) s ON true
      WHERE o.recorded_at <= ? AND o.currency = ? AND coalesce(s.becomes, '') <> 'cancelled'
      GROUP BY l.order_id
      """;

  private static final int ALL = 9999;

  private final EntityManager entities;
  private final Days days;

  TakingsRows(EntityManager entities, Days days) {
    this.entities = entities;
    this.days = days;
  }

  /** What was taken, in a currency. */
  @Transactional
  public List<Taken> taken(int year, String currency) {
    List<Taken> taken = new ArrayList<>();
    new Bundle()
        .ask(
            TAKEN,
            row -> {
              if (currency.equals(row.getString(9))) {
                taken.add(
                    new Taken(
                        row.getString(1),
                        row.getString(2),
                        row.getString(3),
                        row.getString(4),
                        day(row.getObject(5, OffsetDateTime.class)),
                        row.getBigDecimal(6),
                        row.getString(7),
                        row.getBigDecimal(8)));
              }
            },
            year)
        .send(entities);
    return taken;
  }

  /** Orders by the movements of a year. */
  @Transactional
  public Map<UUID, Order> orders(int year) {
    Map<UUID, Order> orders = new HashMap<>();
    new Bundle()
        .ask(
            ORDERS,
            row ->
                orders.put(
                    row.getObject(1, UUID.class),
                    new Order(
                        row.getString(2),
                        row.getString(3),
                        row.getString(4),
                        day(row.getObject(5, OffsetDateTime.class)))),
            year,
            year)
        .send(entities);
    return orders;
  }

  /**
   * What a show came to in its settlement.
   *
   * @param takings without tax
   * @param fee null where there was none; so are the others
   */
  public record Settled(Money takings, Money fee, Money travel, Money helper) {}

  /** The newest settlement of each show by a time, in a currency. */
  @Transactional
  public Map<UUID, Settled> settled(String currency, Instant asOf) {
    Map<UUID, Settled> settled = new HashMap<>();
    new Bundle()
        .ask(
            SETTLED,
            row -> {
              if (currency.equals(row.getString(6))) {
                settled.put(
                    row.getObject(1, UUID.class),
                    new Settled(
                        money(row.getBigDecimal(2), currency),
                        money(row.getBigDecimal(3), currency),
                        money(row.getBigDecimal(4), currency),
                        money(row.getBigDecimal(5), currency)));
              }
            },
            asOf.atOffset(ZoneOffset.UTC))
        .send(entities);
    return settled;
  }

  private static Money money(BigDecimal amount, String currency) {
    return amount == null ? null : Money.rounded(amount, currency);
  }

  /** Goods of gift orders that were not cancelled by a time, in a currency. */
  @Transactional
  public Map<UUID, BigDecimal> billed(String currency, Instant asOf) {
    Map<UUID, BigDecimal> billed = new HashMap<>();
    new Bundle()
        .ask(
            BILLED,
            row -> billed.put(row.getObject(1, UUID.class), row.getBigDecimal(2)),
            asOf.atOffset(ZoneOffset.UTC),
            asOf.atOffset(ZoneOffset.UTC),
            currency)
        .send(entities);
    return billed;
  }

  /**
   * Costs that belong to shows and stand.
   *
   * @param year up to which they were booked and taken back; null for all
   */
  @Transactional
  public Map<UUID, BigDecimal> ofShows(String currency, Integer year) {
    int last = year == null ? ALL : year;
    Map<UUID, BigDecimal> costs = new HashMap<>();
    new Bundle()
        .ask(
            OF_SHOWS,
            row -> costs.put(row.getObject(1, UUID.class), row.getBigDecimal(2)),
            currency,
            last,
            last)
        .send(entities);
    return costs;
  }

  private LocalDate day(OffsetDateTime at) {
    return at == null ? null : days.dateOf(at.toInstant());
  }
}
