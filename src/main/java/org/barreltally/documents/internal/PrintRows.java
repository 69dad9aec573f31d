package org.barreltally.documents.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.documents.LabelPrint;
import org.barreltally.documents.LabelText;
import org.barreltally.ledger.RecordedBy;

/** The log of label prints in the database. */
@ApplicationScoped
public class PrintRows {

  private static final String INSERT =
      """
      INSERT INTO label_prints (id, lot, container, pieces, sheet, start_at, reprint_of, reason, said,
        printed_at, recorded_by)
      VALUES (:id, :lot, :container, :pieces, :sheet, :start, CAST(:original AS uuid),
        CAST(:reason AS text), CAST(:said AS jsonb), :at, :by)
      """;

  private static final String SELECT =
      "SELECT id, lot, container, pieces, sheet, start_at, reprint_of, reason,"
          + " CAST(said AS text) AS said, printed_at FROM label_prints WHERE lot = :lot AND ";

  private final EntityManager entities;
  private final ObjectMapper json;
  private final RecordedBy recordedBy;

  PrintRows(EntityManager entities, ObjectMapper json, RecordedBy recordedBy) {
    this.entities = entities;
    this.json = json;
    this.recordedBy = recordedBy;
  }

  public void add(LabelPrint print) {
    try {
      entities
          .createNativeQuery(INSERT)
          .setParameter("id", print.id())
          .setParameter("lot", print.lot())
          .setParameter("container", print.container())
          .setParameter("pieces", print.count())
          .setParameter("sheet", print.sheet())
          .setParameter("start", print.startAt())
          .setParameter("original", print.reprintOf())
          .setParameter("reason", print.reason())
          .setParameter("said", json.writeValueAsString(print.said()))
          .setParameter("at", print.printedAt())
          .setParameter("by", recordedBy.user())
          .executeUpdate();
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a label print cannot be written", e);
    }
  }

  public Optional<LabelPrint> find(String lot, UUID id) {
    return read("id = :id", Map.of("lot", lot, "id", id), 1).stream().findFirst();
  }

  /** In the order they were recorded, after one of them (or null), at most so many. */
  public List<LabelPrint> list(String lot, UUID after, int limit) {
    return after == null
        ? read("true", Map.of("lot", lot), limit)
        : read("id > :after", Map.of("lot", lot, "after", after), limit);
  }

  private List<LabelPrint> read(String condition, Map<String, Object> parameters, int limit) {
    Query query =
        entities
            .createNativeQuery(SELECT + condition + " ORDER BY id", Tuple.class)
            .setMaxResults(limit);
    parameters.forEach(query::setParameter);
    List<?> rows = query.getResultList();
    return rows.stream().map(Tuple.class::cast).map(this::print).toList();
  }

  private LabelPrint print(Tuple row) {
    try {
      return new LabelPrint(
          row.get("id", UUID.class),
          row.get("lot", String.class),
          row.get("container", String.class),
          row.get("sheet", String.class),
          row.get("start_at", Integer.class),
          row.get("pieces", Integer.class),
          row.get("reprint_of", UUID.class),
          row.get("reason", String.class),
          json.readValue(row.get("said", String.class), LabelText.class),
          row.get("printed_at", Instant.class));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a label print cannot be read", e);
    }
  }
}
