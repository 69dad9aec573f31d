package org.barreltally.sugarbush.boiling.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.sugarbush.boiling.Amount;
import org.barreltally.sugarbush.boiling.EntryKind;

/** Adds rows to the sugarhouse's log; none is ever changed. */
@ApplicationScoped
public class LogRows {

  private final EntityManager entities;
  private final ObjectMapper json;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  LogRows(EntityManager entities, ObjectMapper json, Days days, Ids ids, RecordedBy recordedBy) {
    this.entities = entities;
    this.json = json;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  /**
   * Where an entry belongs.
   *
   * @param boil null unless it is part of one
   * @param bush may be null
   */
  public record Head(EntryKind kind, UUID boil, int season, LocalDate on, String bush) {}

  /**
   * Adds an entry with its amounts.
   *
   * @param said kept as JSON
   */
  public UUID add(Head head, Object said, List<Amount> amounts) {
    UUID id = ids.next();
    entities
        .createNativeQuery(
            "INSERT INTO sugarhouse_entries (id, kind, boil, season, on_day, bush, entered,"
                + " recorded_at, recorded_by) VALUES (:id, :kind, CAST(:boil AS uuid), :season, :on,"
                + " CAST(:bush AS text), CAST(:entered AS jsonb), :at, :by)")
        .setParameter("id", id)
        .setParameter("kind", head.kind().code())
        .setParameter("boil", head.boil() == null ? null : head.boil().toString())
        .setParameter("season", head.season())
        .setParameter("on", head.on())
        .setParameter("bush", head.bush())
        .setParameter("entered", written(said))
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
    amounts.forEach(amount -> add(id, amount));
    return id;
  }

  private void add(UUID entry, Amount amount) {
    entities
        .createNativeQuery(
            "INSERT INTO sugarhouse_amounts (entry, role, tank, ml, ml_u, grams, grams_u, brix,"
                + " brix_u, sugar, sugar_u) VALUES (:entry, :role, CAST(:tank AS text), :ml, :mlU,"
                + " :grams, :gramsU, :brix, :brixU, :sugar, :sugarU)")
        .setParameter("entry", entry)
        .setParameter("role", amount.role().code())
        .setParameter("tank", amount.tank())
        .setParameter("ml", amount.mL().value())
        .setParameter("mlU", amount.mL().u())
        .setParameter("grams", amount.grams().value())
        .setParameter("gramsU", amount.grams().u())
        .setParameter("brix", amount.brix().value())
        .setParameter("brixU", amount.brix().u())
        .setParameter("sugar", amount.sugar().value())
        .setParameter("sugarU", amount.sugar().u())
        .executeUpdate();
  }

  /** Takes an entry back. */
  public void reverse(UUID entry, String reason) {
    entities
        .createNativeQuery(
            "INSERT INTO sugarhouse_reversals (entry, reason, recorded_at, recorded_by)"
                + " VALUES (:entry, :reason, :at, :by)")
        .setParameter("entry", entry)
        .setParameter("reason", reason)
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
  }

  /** Lets nobody else add to or take back this entry until the transaction ends. */
  public void lock(UUID entry) {
    entities
        .createNativeQuery(
            "SELECT CAST(pg_advisory_xact_lock(hashtextextended(:entry, 80)) AS text)")
        .setParameter("entry", entry.toString())
        .getResultList();
  }

  private String written(Object said) {
    try {
      return json.writeValueAsString(said);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("an entry of the log cannot be written", e);
    }
  }
}
