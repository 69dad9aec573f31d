package org.barreltally.gifts.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.gifts.Done;
import org.barreltally.gifts.OrderHead;
import org.barreltally.gifts.Payer;
import org.barreltally.gifts.RecipientState;
import org.barreltally.gifts.Step;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.RecordedBy;
import org.hibernate.Session;

/** What was done with orders, and the states that follow from it. */
@ApplicationScoped
public class StepRows {

  private static final String STEP =
      """
      INSERT INTO gift_steps (id, order_id, n, step, was, becomes, happened_on, movement, undoes,
        postage, paid_by, carrier, reason, recorded_at, recorded_by)
      VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
      """;

  private static final String STATE =
      "UPDATE gift_lines SET state = ? WHERE order_id = ? AND n = ?";

  private final EntityManager entities;
  private final Days days;
  private final RecordedBy recordedBy;

  StepRows(EntityManager entities, Days days, RecordedBy recordedBy) {
    this.entities = entities;
    this.days = days;
    this.recordedBy = recordedBy;
  }

  /** Keeps steps and brings the recipients to their states. */
  public void add(UUID order, List<Done> steps) {
    OffsetDateTime now = OffsetDateTime.ofInstant(days.now(), ZoneOffset.UTC);
    entities.flush();
    entities
        .unwrap(Session.class)
        .doWork(
            connection -> {
              try (PreparedStatement rows = connection.prepareStatement(STEP);
                  PreparedStatement states = connection.prepareStatement(STATE)) {
                for (Done step : steps) {
                  bind(rows, order, step, now);
                  if (step.n() != null && step.was() != step.becomes()) {
                    states.setString(1, step.becomes().code());
                    states.setObject(2, order);
                    states.setInt(3, step.n());
                    states.addBatch();
                  }
                }
                rows.executeBatch();
                states.executeBatch();
              }
            });
  }

  private void bind(PreparedStatement row, UUID order, Done step, OffsetDateTime now)
      throws SQLException {
    row.setObject(1, step.id());
    row.setObject(2, order);
    row.setObject(3, step.n(), Types.INTEGER);
    row.setString(4, step.step().code());
    row.setString(5, step.was() == null ? null : step.was().code());
    row.setString(6, step.becomes() == null ? null : step.becomes().code());
    row.setObject(7, step.on());
    row.setObject(8, step.movement(), Types.OTHER);
    row.setObject(9, step.undoes(), Types.OTHER);
    row.setBigDecimal(10, step.postage() == null ? null : step.postage().amount());
    row.setString(11, step.paidBy() == null ? null : step.paidBy().code());
    row.setString(12, step.carrier());
    row.setString(13, step.reason());
    row.setObject(14, now);
    row.setObject(15, recordedBy.user());
    row.addBatch();
  }

  /** Every step of some orders by order, in sequence; nothing of an order that has none. */
  public Map<UUID, List<Done>> of(Map<UUID, OrderHead> orders) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT * FROM gift_steps WHERE order_id IN (:ids) ORDER BY recorded_at, id",
                Tuple.class)
            .setParameter("ids", orders.keySet())
            .getResultList();
    return Row.byOrder(
        rows.stream().map(row -> new Row((Tuple) row)).toList(),
        row -> done(row, orders.get(row.id("order_id")).currency()));
  }

  private static Done done(Row row, String currency) {
    return new Done(
        row.id("id"),
        row.whole("n"),
        Step.of(row.text("step")),
        state(row.text("was")),
        state(row.text("becomes")),
        row.day("happened_on"),
        row.id("movement"),
        row.id("undoes"),
        row.money("postage", currency),
        row.text("paid_by") == null ? null : Payer.of(row.text("paid_by")),
        row.text("carrier"),
        row.text("reason"));
  }

  private static RecipientState state(String code) {
    return code == null ? null : RecipientState.of(code);
  }

  /** The step that made a movement and was not taken back; empty if it is none of ours. */
  public Optional<UUID> standing(UUID movement) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT s.id FROM gift_steps s WHERE s.movement = :movement"
                    + " AND NOT EXISTS (SELECT 1 FROM gift_steps u WHERE u.undoes = s.id)")
            .setParameter("movement", movement)
            .getResultList();
    return rows.stream().map(UUID.class::cast).findFirst();
  }
}
