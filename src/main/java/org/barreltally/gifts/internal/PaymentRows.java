package org.barreltally.gifts.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.gifts.OrderHead;
import org.barreltally.gifts.Payment;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.pricing.Money;

/** What buyers paid. */
@ApplicationScoped
public class PaymentRows {

  private final EntityManager entities;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  PaymentRows(EntityManager entities, Days days, Ids ids, RecordedBy recordedBy) {
    this.entities = entities;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  public void add(UUID order, Payment.Kind kind, Money amount, LocalDate on) {
    entities
        .createNativeQuery(
            "INSERT INTO gift_payments (id, order_id, kind, amount, paid_on, recorded_at,"
                + " recorded_by) VALUES (:id, :order, :kind, :amount, :on, :at, :by)")
        .setParameter("id", ids.next())
        .setParameter("order", order)
        .setParameter("kind", kind.code())
        .setParameter("amount", amount.amount())
        .setParameter("on", on)
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
  }

  /** By order, in the sequence they were recorded; nothing of an order that has none. */
  public Map<UUID, List<Payment>> of(Map<UUID, OrderHead> orders) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT order_id, id, kind, amount, paid_on FROM gift_payments"
                    + " WHERE order_id IN (:ids) ORDER BY id",
                Tuple.class)
            .setParameter("ids", orders.keySet())
            .getResultList();
    return Row.byOrder(
        rows.stream().map(row -> new Row((Tuple) row)).toList(),
        row ->
            new Payment(
                row.id("id"),
                Payment.Kind.of(row.text("kind")),
                row.money("amount", orders.get(row.id("order_id")).currency()),
                row.day("paid_on")));
  }
}
