package org.barreltally.sales.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.barreltally.measure.ColorClass;
import org.barreltally.pricing.Money;
import org.barreltally.sales.Channel;
import org.barreltally.sales.Conflict;
import org.barreltally.sales.Note;
import org.barreltally.sales.SaidSale;
import org.barreltally.sales.Sale;

/** Reads sales with their lines and notes. */
@ApplicationScoped
public class SaleQuery {

  private static final String HEADS =
      """
      SELECT s.id, s.place, s.channel, s.said_at, s.happened_at, s.price_list, s.currency, s.total,
        s.deal_saving, s.tax, s.cash, s.card, s.owing, s.change, s.movement, s.buyer, s.recorded_at,
        (s.cash IS NOT NULL OR s.card IS NOT NULL OR s.owing IS NOT NULL
          OR position('"paid":' in s.said) > 0) AS paid_said,
        EXISTS (SELECT 1 FROM movements r WHERE r.reverses = s.movement) AS undone
      FROM sales s
      """;

  private static final String LINES =
      """
      SELECT l.sale, l.container, i.lot, l.lot AS said_lot, i.grade, l.pieces, l.unit_price,
        l.price_said, l.amount, l.item
      FROM sale_lines l JOIN items i ON i.id = l.item WHERE l.sale IN (:sales) ORDER BY l.sale, l.line
      """;

  private final EntityManager entities;

  SaleQuery(EntityManager entities) {
    this.entities = entities;
  }

  public List<Sale> all(Collection<UUID> ids) {
    return ids.isEmpty() ? List.of() : read("WHERE s.id IN (:ids)", Map.of("ids", ids), ids.size());
  }

  public List<Sale> list(String place, boolean toLookAt, UUID after, int limit) {
    StringBuilder where = new StringBuilder("WHERE true");
    Map<String, Object> parameters = new HashMap<>();
    if (place != null) {
      where.append(" AND s.place = :place");
      parameters.put("place", place);
    }
    if (toLookAt) {
      where.append(" AND EXISTS (SELECT 1 FROM sale_notes n WHERE n.sale = s.id)");
    }
    if (after != null) {
      where.append(" AND s.id > :after");
      parameters.put("after", after);
    }
    return read(where.toString(), parameters, limit);
  }

  public List<Conflict> conflicts(String place, UUID after, int limit) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT id, sale, place, said, recorded_at FROM sale_conflicts"
                    + " WHERE place = coalesce(CAST(:place AS text), place)"
                    + " AND id > coalesce(CAST(:after AS uuid), CAST(:first AS uuid)) ORDER BY id",
                Tuple.class)
            .setParameter("place", place)
            .setParameter("after", after == null ? null : after.toString())
            .setParameter("first", new UUID(0, 0).toString())
            .setMaxResults(limit)
            .getResultList();
    return rows.stream()
        .map(Tuple.class::cast)
        .map(
            row ->
                new Conflict(
                    row.get("id", UUID.class),
                    row.get("sale", UUID.class),
                    row.get("place", String.class),
                    row.get("said", String.class),
                    row.get("recorded_at", Instant.class)))
        .toList();
  }

  private List<Sale> read(String where, Map<String, Object> parameters, int limit) {
    Query query =
        entities
            .createNativeQuery(HEADS + where + " ORDER BY s.id", Tuple.class)
            .setMaxResults(limit);
    parameters.forEach(query::setParameter);
    List<?> heads = query.getResultList();
    if (heads.isEmpty()) {
      return List.of();
    }
    List<UUID> ids = heads.stream().map(row -> ((Tuple) row).get("id", UUID.class)).toList();
    Map<UUID, List<Tuple>> lines = bySale(LINES, ids);
    Map<UUID, List<Tuple>> notes =
        bySale(
            "SELECT sale, CAST(line AS int) AS line, code, detail FROM sale_notes"
                + " WHERE sale IN (:sales) ORDER BY sale, line, code",
            ids);
    return heads.stream().map(Tuple.class::cast).map(head -> sale(head, lines, notes)).toList();
  }

  private Map<UUID, List<Tuple>> bySale(String sql, List<UUID> ids) {
    List<?> rows =
        entities.createNativeQuery(sql, Tuple.class).setParameter("sales", ids).getResultList();
    return rows.stream()
        .map(Tuple.class::cast)
        .collect(Collectors.groupingBy(row -> row.get("sale", UUID.class)));
  }

  private static Sale sale(Tuple head, Map<UUID, List<Tuple>> lines, Map<UUID, List<Tuple>> notes) {
    UUID id = head.get("id", UUID.class);
    String currency = head.get("currency", String.class);
    boolean paidSaid = head.get("paid_said", Boolean.class);
    return new Sale(
        id,
        head.get("place", String.class),
        Channel.of(head.get("channel", String.class)),
        head.get("said_at", Instant.class),
        head.get("happened_at", Instant.class),
        head.get("recorded_at", Instant.class),
        head.get("price_list", UUID.class),
        lines.get(id).stream().map(line -> line(line, currency)).toList(),
        money(head, "total", currency),
        money(head, "deal_saving", currency),
        money(head, "tax", currency),
        paidSaid
            ? new SaidSale.Paid(
                money(head, "cash", currency),
                money(head, "card", currency),
                money(head, "owing", currency))
            : null,
        money(head, "change", currency),
        head.get("movement", UUID.class),
        head.get("buyer", UUID.class),
        head.get("undone", Boolean.class),
        notes.getOrDefault(id, List.of()).stream()
            .map(
                note ->
                    new Note(
                        note.get("line", Integer.class),
                        note.get("code", String.class),
                        note.get("detail", String.class)))
            .toList());
  }

  private static Sale.Line line(Tuple row, String currency) {
    String grade = row.get("grade", String.class);
    return new Sale.Line(
        row.get("container", String.class),
        row.get("lot", String.class),
        row.get("said_lot", String.class),
        grade == null ? null : ColorClass.of(grade),
        row.get("pieces", Long.class),
        money(row, "unit_price", currency),
        row.get("price_said", Boolean.class),
        money(row, "amount", currency),
        row.get("item", UUID.class));
  }

  private static Money money(Tuple row, String column, String currency) {
    BigDecimal amount = row.get(column, BigDecimal.class);
    return amount == null ? null : Money.rounded(amount, currency);
  }
}
