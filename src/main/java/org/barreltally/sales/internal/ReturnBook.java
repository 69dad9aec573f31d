package org.barreltally.sales.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.pricing.Money;
import org.barreltally.sales.away.Returned;

/** Keeps returns and their inspections. */
@ApplicationScoped
public class ReturnBook {

  private static final String STANDS =
      "NOT EXISTS (SELECT 1 FROM movements v WHERE v.reverses = r.movement)";

  private static final String LINES =
      """
      SELECT i.container, i.lot, l.item, l.pieces,
        CAST(l.pieces - coalesce((SELECT sum(-e.amount) FROM sale_inspections n
          JOIN entries e ON e.movement = n.movement AND e.place = 'to-inspect' AND e.item = l.item
          WHERE n.return_id = l.return_id
            AND NOT EXISTS (SELECT 1 FROM movements v WHERE v.reverses = n.movement)), 0) AS bigint)
          AS waiting
      FROM sale_return_lines l JOIN items i ON i.id = l.item
      WHERE l.return_id = :id ORDER BY i.container, i.lot
      """;

  private final EntityManager entities;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  ReturnBook(EntityManager entities, Days days, Ids ids, RecordedBy recordedBy) {
    this.entities = entities;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  /** Keeps others from taking jars of a sale back until the transaction ends. */
  public void lock(UUID sale) {
    entities
        .createNativeQuery("SELECT pg_advisory_xact_lock(hashtextextended(:sale, 0))")
        .setParameter("sale", sale.toString())
        .getResultList();
  }

  /** Pieces of a sale that came back, by size. */
  public Map<String, Long> returnedBySize(UUID sale) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT i.container, CAST(sum(l.pieces) AS bigint) FROM sale_returns r"
                    + " JOIN sale_return_lines l ON l.return_id = r.id JOIN items i ON i.id = l.item"
                    + " WHERE r.sale = :sale AND "
                    + STANDS
                    + " GROUP BY i.container")
            .setParameter("sale", sale)
            .getResultList();
    Map<String, Long> returned = new HashMap<>();
    rows.stream()
        .map(Object[].class::cast)
        .forEach(row -> returned.put((String) row[0], (Long) row[1]));
    return returned;
  }

  /** Whether jars came back of the sale that a movement stands for. */
  public boolean hasReturns(UUID movement) {
    return !entities
        .createNativeQuery(
            "SELECT 1 FROM sales s JOIN sale_returns r ON r.sale = s.id"
                + " WHERE s.movement = :movement AND "
                + STANDS)
        .setParameter("movement", movement)
        .getResultList()
        .isEmpty();
  }

  public UUID keep(UUID sale, UUID movement, String reason, Money refund, Map<Item, Long> pieces) {
    UUID id = ids.next();
    entities
        .createNativeQuery(
            "INSERT INTO sale_returns"
                + " (id, sale, movement, reason, refund, currency, recorded_at, recorded_by)"
                + " VALUES (:id, :sale, :movement, :reason, CAST(:refund AS numeric),"
                + " CAST(:currency AS text), :at, :by)")
        .setParameter("id", id)
        .setParameter("sale", sale)
        .setParameter("movement", movement)
        .setParameter("reason", reason)
        .setParameter("refund", refund == null ? null : refund.amount())
        .setParameter("currency", refund == null ? null : refund.currency())
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
    pieces.forEach(
        (item, count) ->
            entities
                .createNativeQuery(
                    "INSERT INTO sale_return_lines (return_id, item, pieces)"
                        + " VALUES (:id, :item, :pieces)")
                .setParameter("id", id)
                .setParameter("item", item.id())
                .setParameter("pieces", count)
                .executeUpdate());
    return id;
  }

  public void inspected(UUID returned, UUID movement, String note) {
    entities
        .createNativeQuery(
            "INSERT INTO sale_inspections"
                + " (id, return_id, movement, note, recorded_at, recorded_by)"
                + " VALUES (:id, :returned, :movement, CAST(:note AS text), :at, :by)")
        .setParameter("id", ids.next())
        .setParameter("returned", returned)
        .setParameter("movement", movement)
        .setParameter("note", note)
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
  }

  public Optional<Returned> find(UUID id) {
    return read("r.id = :id", id).stream().findFirst();
  }

  public List<Returned> ofSale(UUID sale) {
    return read("r.sale = :id AND " + STANDS, sale);
  }

  private List<Returned> read(String where, UUID id) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT r.id, r.sale, r.movement, r.reason, r.refund, r.currency, r.recorded_at"
                    + " FROM sale_returns r WHERE "
                    + where
                    + " ORDER BY r.id",
                Tuple.class)
            .setParameter("id", id)
            .getResultList();
    return rows.stream().map(Tuple.class::cast).map(this::returned).toList();
  }

  private Returned returned(Tuple row) {
    UUID id = row.get("id", UUID.class);
    BigDecimal refund = row.get("refund", BigDecimal.class);
    List<?> lines =
        entities.createNativeQuery(LINES, Tuple.class).setParameter("id", id).getResultList();
    return new Returned(
        id,
        row.get("sale", UUID.class),
        row.get("movement", UUID.class),
        row.get("reason", String.class),
        refund == null ? null : Money.rounded(refund, row.get("currency", String.class)),
        row.get("recorded_at", Instant.class),
        lines.stream()
            .map(Tuple.class::cast)
            .map(
                line ->
                    new Returned.Line(
                        line.get("container", String.class),
                        line.get("lot", String.class),
                        line.get("item", UUID.class),
                        line.get("pieces", Long.class),
                        line.get("waiting", Long.class)))
            .toList());
  }
}
