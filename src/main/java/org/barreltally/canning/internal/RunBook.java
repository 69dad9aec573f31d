package org.barreltally.canning.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.canning.PackSheet;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.RecordedBy;

/** Keeps the sheets of runs as they were given, so that no later rounding or rule changes them. */
@ApplicationScoped
public class RunBook {

  private final RunRows rows;
  private final ObjectMapper json;
  private final Days days;
  private final RecordedBy recordedBy;

  public RunBook(RunRows rows, ObjectMapper json, Days days, RecordedBy recordedBy) {
    this.rows = rows;
    this.json = json;
    this.days = days;
    this.recordedBy = recordedBy;
  }

  public void keep(PackSheet sheet, UUID movement) {
    try {
      rows.persist(
          new RunRow(
              sheet, json.writeValueAsString(sheet), movement, days.now(), recordedBy.user()));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a pack sheet cannot be written", e);
    }
  }

  public Optional<PackSheet> find(String lot) {
    return rows.findByIdOptional(lot).map(this::read);
  }

  /** Sheets by lot code, after a code, at most so many. */
  public List<PackSheet> list(String after, int limit) {
    return rows.find("lot > ?1 order by lot", after == null ? "" : after).page(0, limit).stream()
        .map(this::read)
        .toList();
  }

  private PackSheet read(RunRow row) {
    try {
      return json.readValue(row.sheet(), PackSheet.class);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the pack sheet of a run cannot be read", e);
    }
  }
}
