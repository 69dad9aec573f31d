package org.barreltally.lots.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Taste;
import org.hibernate.annotations.Immutable;

/** One grading of a lot: never changed, a later one stands beside it. */
@Entity
@Immutable
@Table(name = "lot_gradings")
public class GradingRow {
  @Id private UUID id;
  private String lot;

  @Column(name = "graded_on")
  private LocalDate gradedOn;

  private double transmittance;
  private String taste;
  private String grade;
  private String reason;

  @Column(name = "recorded_at")
  private Instant recordedAt;

  @Column(name = "recorded_by")
  private UUID recordedBy;

  protected GradingRow() {}

  public GradingRow(
      UUID id,
      String lot,
      LocalDate gradedOn,
      double transmittance,
      Taste taste,
      ColorClass grade,
      String reason,
      Instant recordedAt,
      UUID recordedBy) {
    this.id = id;
    this.lot = lot;
    this.gradedOn = gradedOn;
    this.transmittance = transmittance;
    this.taste = taste.code();
    this.grade = grade.code();
    this.reason = reason;
    this.recordedAt = recordedAt;
    this.recordedBy = recordedBy;
  }
}
