package org.barreltally.gifts.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.gifts.PlannedCanning;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.measure.ColorClass;

/** What the owner means to can. */
@ApplicationScoped
public class PlanRows {

  private final EntityManager entities;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  PlanRows(EntityManager entities, Days days, Ids ids, RecordedBy recordedBy) {
    this.entities = entities;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  public PlannedCanning add(PlannedCanning said) {
    UUID id = ids.next();
    entities
        .createNativeQuery(
            "INSERT INTO planned_canning (id, planned_on, container, grade, pieces, recorded_at,"
                + " recorded_by) VALUES (:id, :on, :container, :grade, :pieces, :at, :by)")
        .setParameter("id", id)
        .setParameter("on", said.on())
        .setParameter("container", said.container())
        .setParameter("grade", said.grade().code())
        .setParameter("pieces", said.count())
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
    return new PlannedCanning(id, said.on(), said.container(), said.grade(), said.count());
  }

  /** False where there is no such plan, or it was withdrawn. */
  public boolean withdraw(UUID id) {
    return entities
            .createNativeQuery(
                "UPDATE planned_canning SET withdrawn_at = :at"
                    + " WHERE id = :id AND withdrawn_at IS NULL")
            .setParameter("at", days.now())
            .setParameter("id", id)
            .executeUpdate()
        == 1;
  }

  /** Plans from one day to another that stand, by day. */
  public List<PlannedCanning> between(LocalDate from, LocalDate to) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT id, planned_on, container, grade, pieces FROM planned_canning"
                    + " WHERE planned_on BETWEEN :from AND :to AND withdrawn_at IS NULL"
                    + " ORDER BY planned_on, id",
                Tuple.class)
            .setParameter("from", from)
            .setParameter("to", to)
            .getResultList();
    return rows.stream()
        .map(row -> new Row((Tuple) row))
        .map(
            row ->
                new PlannedCanning(
                    row.id("id"),
                    row.day("planned_on"),
                    row.text("container"),
                    ColorClass.of(row.text("grade")),
                    row.pieces("pieces")))
        .toList();
  }
}
