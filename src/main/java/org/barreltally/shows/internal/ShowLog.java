package org.barreltally.shows.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.pricing.Money;
import org.barreltally.shows.Payment;
import org.barreltally.shows.ShowState;
import org.barreltally.shows.Step;

/** What is only ever added to a show: its steps, what was paid, what is reserved for it. */
@ApplicationScoped
public class ShowLog {

  private final EntityManager entities;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  ShowLog(EntityManager entities, Days days, Ids ids, RecordedBy recordedBy) {
    this.entities = entities;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  public void step(UUID show, ShowState state, String reason) {
    entities
        .createNativeQuery(
            "INSERT INTO show_steps (id, show, state, reason, recorded_at, recorded_by)"
                + " VALUES (:id, :show, :state, CAST(:reason AS text), :at, :by)")
        .setParameter("id", ids.next())
        .setParameter("show", show)
        .setParameter("state", state.code())
        .setParameter("reason", reason)
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
  }

  public List<Step> steps(UUID show) {
    return rows(
            "SELECT state, recorded_at, reason FROM show_steps WHERE show = :show"
                + " ORDER BY recorded_at, id",
            show)
        .map(
            row ->
                new Step(
                    ShowState.of(row.get(0, String.class)),
                    row.get(1, Instant.class),
                    row.get(2, String.class)))
        .toList();
  }

  public Payment pay(UUID show, LocalDate on, Money amount, String note) {
    Payment payment = new Payment(ids.next(), on, amount, note);
    entities
        .createNativeQuery(
            "INSERT INTO show_payments"
                + " (id, show, paid_on, amount, currency, note, recorded_at, recorded_by)"
                + " VALUES (:id, :show, :on, :amount, :currency, CAST(:note AS text), :at, :by)")
        .setParameter("id", payment.id())
        .setParameter("show", show)
        .setParameter("on", on)
        .setParameter("amount", amount.amount())
        .setParameter("currency", amount.currency())
        .setParameter("note", note)
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
    return payment;
  }

  public List<Payment> payments(UUID show) {
    return rows(
            "SELECT id, paid_on, amount, currency, note FROM show_payments WHERE show = :show"
                + " ORDER BY id",
            show)
        .map(
            row ->
                new Payment(
                    row.get(0, UUID.class),
                    row.get(1, LocalDate.class),
                    Money.rounded(row.get(2, BigDecimal.class), row.get(3, String.class)),
                    row.get(4, String.class)))
        .toList();
  }

  public void reserved(UUID show, UUID reservation) {
    entities
        .createNativeQuery(
            "INSERT INTO show_reservations (reservation, show, recorded_at, recorded_by)"
                + " VALUES (:reservation, :show, :at, :by)")
        .setParameter("reservation", reservation)
        .setParameter("show", show)
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
  }

  /** The reservations made for a show, the oldest first, ended ones among them. */
  public List<UUID> reservations(UUID show) {
    return rows(
            "SELECT reservation FROM show_reservations WHERE show = :show"
                + " ORDER BY recorded_at, reservation",
            show)
        .map(row -> row.get(0, UUID.class))
        .toList();
  }

  private Stream<Tuple> rows(String sql, UUID show) {
    List<?> found =
        entities.createNativeQuery(sql, Tuple.class).setParameter("show", show).getResultList();
    return found.stream().map(Tuple.class::cast);
  }
}
