package org.barreltally.sugarbush.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.pricing.Money;
import org.barreltally.sugarbush.Credit;
import org.barreltally.sugarbush.Lease;

/** Leases that were closed, and to which one what was left of each went on. */
@ApplicationScoped
public class CreditRows {

  private final EntityManager entities;
  private final Days days;
  private final RecordedBy recordedBy;

  CreditRows(EntityManager entities, Days days, RecordedBy recordedBy) {
    this.entities = entities;
    this.days = days;
    this.recordedBy = recordedBy;
  }

  public void close(UUID lease, LocalDate on, Money left, BigDecimal mL) {
    recorded(
            "INSERT INTO lease_closings (lease, on_day, credit, credit_ml, currency, recorded_at,"
                + " recorded_by) VALUES (:lease, :on, :credit, CAST(:ml AS numeric), :currency,"
                + " :at, :by)")
        .setParameter("lease", lease)
        .setParameter("on", on)
        .setParameter("credit", left.amount())
        .setParameter("ml", mL == null ? null : mL.toPlainString())
        .setParameter("currency", left.currency())
        .executeUpdate();
  }

  /** The first lease of the same trees of a later season that is open. */
  public Optional<UUID> nextOpen(Lease lease) {
    List<?> next =
        entities
            .createNativeQuery(
                "SELECT l.id FROM leases l WHERE l.landowner = :landowner AND l.bush = :bush"
                    + " AND l.season > :season AND NOT EXISTS (SELECT 1 FROM lease_closings c"
                    + " WHERE c.lease = l.id) ORDER BY l.season LIMIT 1")
            .setParameter("landowner", lease.landowner().id())
            .setParameter("bush", lease.bush())
            .setParameter("season", lease.season())
            .getResultList();
    return next.stream().map(UUID.class::cast).findFirst();
  }

  public void carry(UUID from, UUID into) {
    recorded(
            "INSERT INTO lease_carries (from_lease, into_lease, recorded_at, recorded_by)"
                + " VALUES (:from, :into, :at, :by)")
        .setParameter("from", from)
        .setParameter("into", into)
        .executeUpdate();
  }

  /** Takes over what was left of closed leases of the same trees and went nowhere yet. */
  public void carryInto(UUID lease, UUID landowner, String bush, int season) {
    recorded(
            "INSERT INTO lease_carries (from_lease, into_lease, recorded_at, recorded_by)"
                + " SELECT c.lease, :into, :at, :by FROM lease_closings c"
                + " JOIN leases l ON l.id = c.lease WHERE l.landowner = :landowner"
                + " AND l.bush = :bush AND l.season < :season AND NOT EXISTS"
                + " (SELECT 1 FROM lease_carries w WHERE w.from_lease = c.lease)")
        .setParameter("into", lease)
        .setParameter("landowner", landowner)
        .setParameter("bush", bush)
        .setParameter("season", season)
        .executeUpdate();
  }

  public List<Credit> carriedInto(UUID lease) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT l.id, l.season, c.on_day, c.credit, c.credit_ml, c.currency"
                    + " FROM lease_carries w JOIN lease_closings c ON c.lease = w.from_lease"
                    + " JOIN leases l ON l.id = c.lease WHERE w.into_lease = :lease"
                    + " ORDER BY l.season",
                Tuple.class)
            .setParameter("lease", lease)
            .getResultList();
    return rows.stream()
        .map(Tuple.class::cast)
        .map(
            row ->
                new Credit(
                    row.get("id", UUID.class),
                    row.get("season", Integer.class),
                    row.get("on_day", LocalDate.class),
                    Money.rounded(
                        row.get("credit", BigDecimal.class), row.get("currency", String.class)),
                    row.get("credit_ml", BigDecimal.class)))
        .toList();
  }

  public Optional<UUID> wentOnTo(UUID lease) {
    List<?> into =
        entities
            .createNativeQuery("SELECT into_lease FROM lease_carries WHERE from_lease = :lease")
            .setParameter("lease", lease)
            .getResultList();
    return into.stream().map(UUID.class::cast).findFirst();
  }

  private Query recorded(String sql) {
    return entities
        .createNativeQuery(sql)
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user());
  }
}
