package org.barreltally.gifts.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.List;
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

  /** In the order they were recorded. */
  public List<Payment> of(OrderHead order) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT id, kind, amount, paid_on FROM gift_payments WHERE order_id = :id ORDER BY"
                    + " id",
                Tuple.class)
            .setParameter("id", order.id())
            .getResultList();
    return rows.stream()
        .map(row -> new Row((Tuple) row))
        .map(
            row ->
                new Payment(
                    row.id("id"),
                    Payment.Kind.of(row.text("kind")),
                    row.money("amount", order.currency()),
                    row.day("paid_on")))
        .toList();
  }
}
