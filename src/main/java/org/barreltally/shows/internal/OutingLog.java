package org.barreltally.shows.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.pricing.Money;

/** What was said beside the movements of jars out to tables, between them and home. */
@ApplicationScoped
public class OutingLog {

  private static final String FLOAT =
      """
      SELECT sum(o.float), o.currency FROM show_pack_outs o
      WHERE o.show = :show AND o.float IS NOT NULL
        AND NOT EXISTS (SELECT 1 FROM movements r WHERE r.reverses = o.movement)
      GROUP BY o.currency
      """;

  private static final String EXCHANGED =
      """
      SELECT DISTINCT CASE WHEN t.from_show = :show THEN t.to_show ELSE t.from_show END
      FROM show_transfers t
      WHERE (t.from_show = :show OR t.to_show = :show)
        AND NOT EXISTS (SELECT 1 FROM movements r WHERE r.reverses = t.movement)
      """;

  private final EntityManager entities;
  private final ShowJson json;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  OutingLog(EntityManager entities, ShowJson json, Days days, Ids ids, RecordedBy recordedBy) {
    this.entities = entities;
    this.json = json;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  /** Keeps a pack-out; the change money may be null. */
  public UUID packedOut(UUID show, UUID movement, Money cashFloat, String note) {
    UUID id = ids.next();
    recorded(
            "INSERT INTO show_pack_outs"
                + " (id, show, movement, float, currency, note, recorded_at, recorded_by)"
                + " VALUES (:id, :show, :movement, CAST(:float AS numeric), CAST(:currency AS text),"
                + " CAST(:note AS text), :at, :by)",
            id)
        .setParameter("show", show)
        .setParameter("movement", movement)
        .setParameter("float", cashFloat == null ? null : cashFloat.amount())
        .setParameter("currency", cashFloat == null ? null : cashFloat.currency())
        .setParameter("note", note)
        .executeUpdate();
    return id;
  }

  /** The change money of all pack-outs of a show that were not taken back; empty for none. */
  public Optional<Money> cashFloat(UUID show) {
    List<?> rows = entities.createNativeQuery(FLOAT).setParameter("show", show).getResultList();
    return rows.stream()
        .map(Object[].class::cast)
        .map(row -> Money.rounded((BigDecimal) row[0], (String) row[1]))
        .findFirst();
  }

  public UUID transferred(UUID from, UUID to, UUID movement) {
    UUID id = ids.next();
    recorded(
            "INSERT INTO show_transfers (id, from_show, to_show, movement, recorded_at, recorded_by)"
                + " VALUES (:id, :from, :to, :movement, :at, :by)",
            id)
        .setParameter("from", from)
        .setParameter("to", to)
        .setParameter("movement", movement)
        .executeUpdate();
    return id;
  }

  /** The shows with which a show exchanged jars, in either direction. */
  public List<UUID> exchangedWith(UUID show) {
    List<?> rows = entities.createNativeQuery(EXCHANGED).setParameter("show", show).getResultList();
    return rows.stream().map(UUID.class::cast).toList();
  }

  /** Keeps a count of what came home; the movement is null where nothing did. */
  public UUID cameBack(UUID show, UUID movement, Object lines, String note) {
    UUID id = ids.next();
    recorded(
            "INSERT INTO show_backs (id, show, movement, lines, note, recorded_at, recorded_by)"
                + " VALUES (:id, :show, CAST(:movement AS uuid), CAST(:lines AS jsonb),"
                + " CAST(:note AS text), :at, :by)",
            id)
        .setParameter("show", show)
        .setParameter("movement", movement == null ? null : movement.toString())
        .setParameter("lines", json.written(lines))
        .setParameter("note", note)
        .executeUpdate();
    return id;
  }

  private Query recorded(String sql, UUID id) {
    return entities
        .createNativeQuery(sql)
        .setParameter("id", id)
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user());
  }
}
