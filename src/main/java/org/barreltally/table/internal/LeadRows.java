package org.barreltally.table.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.table.Lead;
import org.barreltally.table.TellLead;

/** The rows of people who would like gift boxes. */
@ApplicationScoped
public class LeadRows {

  private static final int MOST_READ = 500;

  private final EntityManager entities;
  private final RecordedBy recordedBy;
  private final Days days;

  LeadRows(EntityManager entities, RecordedBy recordedBy, Days days) {
    this.entities = entities;
    this.recordedBy = recordedBy;
    this.days = days;
  }

  public void add(UUID show, TellLead said) {
    entities
        .createNativeQuery(
            "INSERT INTO table_leads (id, show, said_at, name, phone, wish, recorded_at, recorded_by)"
                + " VALUES (:id, :show, :said, :name, :phone, CAST(:wish AS text), :at, :by)"
                + " ON CONFLICT (id) DO NOTHING")
        .setParameter("id", said.id())
        .setParameter("show", show)
        .setParameter("said", said.at())
        .setParameter("name", said.name().strip())
        .setParameter("phone", said.phone().strip())
        .setParameter("wish", said.wish())
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
  }

  public List<Lead> open() {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT id, show, said_at, name, phone, wish FROM table_leads WHERE done_at IS NULL"
                    + " ORDER BY recorded_at, id",
                Tuple.class)
            .setMaxResults(MOST_READ)
            .getResultList();
    return rows.stream()
        .map(Tuple.class::cast)
        .map(
            row ->
                new Lead(
                    row.get("id", UUID.class),
                    row.get("show", UUID.class),
                    row.get("said_at", Instant.class),
                    row.get("name", String.class),
                    row.get("phone", String.class),
                    row.get("wish", String.class)))
        .toList();
  }

  /** Removes what is known of somebody; says whether there is such a row. */
  public boolean done(UUID id, Instant at) {
    return entities
            .createNativeQuery(
                "UPDATE table_leads SET name = NULL, phone = NULL, wish = NULL,"
                    + " done_at = coalesce(done_at, :at) WHERE id = :id")
            .setParameter("id", id)
            .setParameter("at", at)
            .executeUpdate()
        == 1;
  }
}
