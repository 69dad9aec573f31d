package org.barreltally.lots;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Map;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;

/** Opens lots of which everything is known at once: measured, graded and made of other lots. */
@ApplicationScoped
public class PackedLots {

  private static final String OPEN =
      """
      WITH lot AS (
        INSERT INTO lots
          (code, kind, made_on, seasons, brix, brix_u, grade, transmittance, taste, held)
        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
        RETURNING code, made_on, transmittance, taste, grade)
      INSERT INTO lot_gradings
        (id, lot, graded_on, transmittance, taste, grade, recorded_at, recorded_by)
      SELECT ?::uuid, lot.*, ?::timestamptz, ?::uuid FROM lot
      """;

  private final Family family;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  PackedLots(Family family, Days days, Ids ids, RecordedBy recordedBy) {
    this.family = family;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  /**
   * Adds a lot with its first grading, made on the same day, and its parents.
   *
   * @param lot with its grade
   * @param grams by parent; zero where only an unwashed vessel links the two
   */
  public void open(Lot lot, Map<String, Long> grams, Bundle write) {
    write.add(
        OPEN,
        lot.code(),
        lot.kind().code(),
        lot.madeOn(),
        Column.of("integer", lot.seasons()),
        lot.brix().value(),
        lot.brix().u(),
        lot.grade().code(),
        lot.transmittance(),
        lot.taste().code(),
        lot.held(),
        ids.next(),
        days.now(),
        recordedBy.user());
    family.join(lot.code(), grams, write);
  }
}
