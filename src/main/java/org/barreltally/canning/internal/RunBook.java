package org.barreltally.canning.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.canning.PackSheet;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.RecordedBy;

/** Keeps the sheets of runs as they were given, so that no later rounding or rule changes them. */
@ApplicationScoped
public class RunBook {

  private static final String KEEP =
      """
      INSERT INTO canning_runs (lot, movement, run_on, sheet, release_reason, recorded_at, recorded_by)
        VALUES (?, ?, ?, ?::jsonb, ?, ?, ?)
      """;

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

  /** Adds a sheet; its lot and its movement must be known by then. */
  public void keep(PackSheet sheet, UUID movement, Bundle write) {
    try {
      write.add(
          KEEP,
          sheet.lot(),
          movement,
          sheet.on(),
          json.writeValueAsString(sheet),
          sheet.releaseReason(),
          days.now(),
          recordedBy.user());
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
