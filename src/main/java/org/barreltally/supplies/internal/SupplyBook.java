package org.barreltally.supplies.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.supplies.SupplyMovement;
import org.barreltally.supplies.SupplyMovement.Kind;

/** Writes what happens to supplies, each row with the balance it leaves. */
@ApplicationScoped
public class SupplyBook {

  /** What is on hand, and how many movements made it. */
  public record Balance(long onHand, long seq) {}

  private static final String WRITE =
      """
      WITH kept AS (UPDATE supply_balances SET on_hand = ?, seq = ? WHERE supply = ?)
      INSERT INTO supply_movements (id, supply, seq, kind, happened_on, pieces, change,
        on_hand_after, movement, note, recorded_at, recorded_by)
      VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
      """;

  private final EntityManager entities;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  SupplyBook(EntityManager entities, Days days, Ids ids, RecordedBy recordedBy) {
    this.entities = entities;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  /** Begins to keep count of a supply, at nothing, if that was not begun. */
  public void begin(String supply) {
    entities
        .createNativeQuery(
            "INSERT INTO supply_balances (supply, on_hand, seq) VALUES (:supply, 0, 0)"
                + " ON CONFLICT (supply) DO NOTHING")
        .setParameter("supply", supply)
        .executeUpdate();
  }

  /**
   * What is on hand of some supplies, kept from others until the transaction ends; locked by code,
   * so that two runs never wait for each other in a ring. What is not counted yet is not in it.
   */
  public Map<String, Balance> locked(Collection<String> supplies) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT supply, on_hand, seq FROM supply_balances WHERE supply IN (:supplies)"
                    + " ORDER BY supply FOR UPDATE")
            .setParameter("supplies", supplies)
            .getResultList();
    Map<String, Balance> balances = new HashMap<>();
    for (Object row : rows) {
      Object[] c = (Object[]) row;
      balances.put((String) c[0], new Balance((long) c[1], (long) c[2]));
    }
    return balances;
  }

  /** Whether it was counted on a later day: that count had in it whatever happened on this one. */
  public boolean countedAfter(String supply, LocalDate on) {
    return !entities
        .createNativeQuery(
            "SELECT 1 FROM supply_movements"
                + " WHERE supply = :supply AND kind = 'count' AND happened_on > :on LIMIT 1")
        .setParameter("supply", supply)
        .setParameter("on", on)
        .getResultList()
        .isEmpty();
  }

  /** By how much later days changed what is on hand. */
  public long changedAfter(String supply, LocalDate on) {
    return ((Number)
            entities
                .createNativeQuery(
                    "SELECT coalesce(sum(change), 0) FROM supply_movements"
                        + " WHERE supply = :supply AND happened_on > :on")
                .setParameter("supply", supply)
                .setParameter("on", on)
                .getSingleResult())
        .longValue();
  }

  /**
   * Writes one row; the balance must be locked.
   *
   * @param run the movement of the canning run; null for receipts and counts
   */
  public SupplyMovement write(
      String supply,
      Balance before,
      Kind kind,
      LocalDate on,
      long pieces,
      long change,
      UUID run,
      String note) {
    SupplyMovement row = row(supply, before, kind, on, pieces, change, run, note);
    Bundle write = Bundle.byKeys();
    add(row, write);
    write.send(entities);
    return row;
  }

  /** Writes what a run used, together with other things; the balance must be locked. */
  public void writeUse(
      String supply,
      Balance before,
      LocalDate on,
      long pieces,
      long change,
      UUID run,
      Bundle write) {
    add(row(supply, before, Kind.RUN, on, pieces, change, run, null), write);
  }

  private SupplyMovement row(
      String supply,
      Balance before,
      Kind kind,
      LocalDate on,
      long pieces,
      long change,
      UUID run,
      String note) {
    return new SupplyMovement(
        ids.next(),
        supply,
        before.seq() + 1,
        kind,
        on,
        pieces,
        change,
        Math.addExact(before.onHand(), change),
        run,
        note);
  }

  private void add(SupplyMovement row, Bundle write) {
    write.add(
        WRITE,
        row.onHandAfter(),
        row.seq(),
        row.supply(),
        row.id(),
        row.supply(),
        row.seq(),
        row.kind().code(),
        row.on(),
        row.pieces(),
        row.change(),
        row.onHandAfter(),
        row.run(),
        row.note(),
        days.now(),
        recordedBy.user());
  }
}
