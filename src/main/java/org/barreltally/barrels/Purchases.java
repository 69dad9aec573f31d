package org.barreltally.barrels;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.sql.Date;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;

/**
 * Syrup bought from others. A supplier's name stands beside the record, so that it can be removed.
 */
@ApplicationScoped
public class Purchases {

  /** A purchase as it is read. */
  public record Bought(
      UUID id, LocalDate on, String lot, UUID supplier, String name, String details) {}

  /** A purchase as it was just recorded. */
  public record Recorded(UUID purchase, UUID supplier, Barrel barrel) {}

  private final Filling filling;
  private final EntityManager entities;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  public Purchases(
      Filling filling, EntityManager entities, Days days, Ids ids, RecordedBy recordedBy) {
    this.filling = filling;
    this.entities = entities;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  /** Records a bought barrel; a supplier of the same name is the same supplier. */
  @Transactional
  public Recorded record(FillBarrel said, String supplierName, String supplierDetails) {
    days.happened(said.filledOn(), "on");
    Barrel barrel = filling.fill(said, Origin.BOUGHT);
    UUID supplier = supplier(supplierName.strip(), supplierDetails);
    UUID purchase = ids.next();
    entities
        .createNativeQuery(
            "INSERT INTO purchases (id, lot, supplier, bought_on, recorded_at, recorded_by)"
                + " VALUES (:id, :lot, :supplier, :on, :at, :by)")
        .setParameter("id", purchase)
        .setParameter("lot", barrel.lot().code())
        .setParameter("supplier", supplier)
        .setParameter("on", said.filledOn())
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
    return new Recorded(purchase, supplier, barrel);
  }

  private UUID supplier(String name, String details) {
    return (UUID)
        entities
            .createNativeQuery(
                "INSERT INTO suppliers AS s (id, name, details) VALUES (:id, :name, :details)"
                    + " ON CONFLICT (name) DO UPDATE SET details = coalesce(excluded.details, s.details)"
                    + " RETURNING id")
            .setParameter("id", ids.next())
            .setParameter("name", name)
            .setParameter("details", details)
            .getSingleResult();
  }

  /** Purchases in the order they were recorded, after one of them (or null), at most so many. */
  @Transactional
  public List<Bought> list(UUID after, int limit) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT p.id, p.bought_on, p.lot, s.id AS supplier, s.name, s.details"
                    + " FROM purchases p JOIN suppliers s ON s.id = p.supplier"
                    + " WHERE CAST(:after AS uuid) IS NULL OR p.id > CAST(:after AS uuid) ORDER BY p.id")
            .setParameter("after", after == null ? null : after.toString())
            .setMaxResults(limit)
            .getResultList();
    return rows.stream()
        .map(Object[].class::cast)
        .map(
            c ->
                new Bought(
                    (UUID) c[0],
                    c[1] instanceof Date date ? date.toLocalDate() : (LocalDate) c[1],
                    (String) c[2],
                    (UUID) c[3],
                    (String) c[4],
                    (String) c[5]))
        .toList();
  }
}
