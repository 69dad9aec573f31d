package org.barreltally.barrels.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;

/** What an instrument said of a filling, as it was entered, and what it came to. Never changed. */
@Entity
@Immutable
@Table(name = "barrel_readings")
public class ReadingRow {
  @Id private UUID id;
  private UUID filling;
  private String lot;
  private String kind;

  @Column(name = "read_on")
  private LocalDate readOn;

  @JdbcTypeCode(SqlTypes.JSON)
  private Map<String, Object> entered;

  private double result;

  @Column(name = "result_u")
  private double resultUncertainty;

  @Column(name = "recorded_at")
  private Instant recordedAt;

  @Column(name = "recorded_by")
  private UUID recordedBy;

  protected ReadingRow() {}

  public ReadingRow(
      UUID id,
      UUID filling,
      String lot,
      String kind,
      LocalDate readOn,
      Map<String, Object> entered,
      double result,
      double resultUncertainty,
      Instant recordedAt,
      UUID recordedBy) {
    this.id = id;
    this.filling = filling;
    this.lot = lot;
    this.kind = kind;
    this.readOn = readOn;
    this.entered = entered;
    this.result = result;
    this.resultUncertainty = resultUncertainty;
    this.recordedAt = recordedAt;
    this.recordedBy = recordedBy;
  }
}
