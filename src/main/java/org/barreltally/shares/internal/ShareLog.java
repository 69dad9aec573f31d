package org.barreltally.shares.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.shares.HandedOver;

/** What was handed to landowners. What a reversed movement told counts no more. */
@ApplicationScoped
public class ShareLog {

  private final EntityManager entities;
  private final ObjectMapper json;
  private final Days days;
  private final RecordedBy recordedBy;

  ShareLog(EntityManager entities, ObjectMapper json, Days days, RecordedBy recordedBy) {
    this.entities = entities;
    this.json = json;
    this.days = days;
    this.recordedBy = recordedBy;
  }

  public void keep(HandedOver handed) {
    entities
        .createNativeQuery(
            "INSERT INTO lease_deliveries (id, lease, on_day, movement, lines, note, recorded_at,"
                + " recorded_by) VALUES (:id, :lease, :on, :movement, CAST(:lines AS jsonb),"
                + " CAST(:note AS text), :at, :by)")
        .setParameter("id", handed.id())
        .setParameter("lease", handed.lease())
        .setParameter("on", handed.on())
        .setParameter("movement", handed.movement())
        .setParameter("lines", written(handed.lines()))
        .setParameter("note", handed.note())
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
  }

  /** On a lease, in the order of their days. */
  public List<HandedOver> of(UUID lease) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT d.id, d.on_day, d.movement, d.note, CAST(d.lines AS text) AS told"
                    + " FROM lease_deliveries d WHERE d.lease = :lease AND NOT EXISTS"
                    + " (SELECT 1 FROM movements r WHERE r.reverses = d.movement)"
                    + " ORDER BY d.on_day, d.id",
                Tuple.class)
            .setParameter("lease", lease)
            .getResultList();
    return rows.stream()
        .map(Tuple.class::cast)
        .map(
            row ->
                new HandedOver(
                    row.get("id", UUID.class),
                    lease,
                    row.get("on_day", LocalDate.class),
                    row.get("movement", UUID.class),
                    read(row.get("told", String.class)),
                    row.get("note", String.class)))
        .toList();
  }

  private String written(List<HandedOver.Line> lines) {
    try {
      return json.writeValueAsString(lines);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("lines handed over cannot be written", e);
    }
  }

  private List<HandedOver.Line> read(String told) {
    try {
      return json.readValue(told, new TypeReference<>() {});
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("lines handed over cannot be read", e);
    }
  }
}
