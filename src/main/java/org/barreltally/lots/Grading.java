package org.barreltally.lots;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.Pools;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.lots.internal.GradingRow;
import org.barreltally.lots.internal.LotRow;
import org.barreltally.lots.internal.LotRows;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Taste;
import org.barreltally.refusal.InvalidField;
import org.barreltally.settings.FarmSettings;

/**
 * Grades lots from a measured light transmittance and a taste, by the limits of the farm's
 * jurisdiction. A grading is an event: what was sold under an earlier one keeps it.
 */
@ApplicationScoped
public class Grading {

  private final LotRows rows;
  private final EntityManager entities;
  private final Pools pools;
  private final Holds holds;
  private final FarmSettings settings;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  public Grading(
      LotRows rows,
      EntityManager entities,
      Pools pools,
      Holds holds,
      FarmSettings settings,
      Days days,
      Ids ids,
      RecordedBy recordedBy) {
    this.rows = rows;
    this.entities = entities;
    this.pools = pools;
    this.holds = holds;
    this.settings = settings;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  /**
   * The grade that a reading and a taste come to, storing nothing.
   *
   * @param transmittance %Tc, 0 to 100
   * @throws InvalidField naming transmittance or taste
   */
  public ColorClass gradeOf(Double transmittance, Taste taste) {
    if (transmittance == null || transmittance < 0 || transmittance > 100) {
      throw new InvalidField(
          "transmittance", "Give the light transmittance in %Tc, a number from 0 to 100.");
    }
    if (taste == null) {
      throw new InvalidField("taste", "Say how it tastes, for example clean.");
    }
    return settings.jurisdiction().grade(transmittance, taste);
  }

  /**
   * Records a grading. Jars of the lot change to the pool of the new grade; jars that come to
   * Processing Grade are held, because that grade is never sold in small containers (USDA AMS grade
   * standards).
   *
   * @param reason may be null for a first grading
   */
  @Transactional
  public ColorClass grade(
      String lot, LocalDate on, Double transmittance, Taste taste, String reason) {
    ColorClass grade = gradeOf(transmittance, taste);
    LotRow row = rows.findById(lot, LockModeType.PESSIMISTIC_WRITE);
    if (row == null) {
      throw new UnknownLot(lot);
    }
    note(row, on, transmittance, taste, grade, reason);
    pools.regrade(lot, grade.code());
    if (grade == ColorClass.PROCESSING && row.asLot().kind() == Lot.Kind.PACKED) {
      holds.hold(lot, "Came to Processing Grade, which is never sold in small containers.");
    }
    return grade;
  }

  private void note(
      LotRow row,
      LocalDate on,
      double transmittance,
      Taste taste,
      ColorClass grade,
      String reason) {
    row.graded(grade, transmittance, taste);
    entities.persist(
        new GradingRow(
            ids.next(),
            row.asLot().code(),
            on,
            transmittance,
            taste,
            grade,
            reason,
            days.now(),
            recordedBy.user()));
  }
}
