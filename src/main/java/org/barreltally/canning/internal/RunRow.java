package org.barreltally.canning.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;

/** A stored run: its sheet as it was given. Never changed. */
@Entity
@Immutable
@Table(name = "canning_runs")
public class RunRow {
  @Id private String lot;
  private UUID movement;

  @Column(name = "run_on")
  private LocalDate on;

  @JdbcTypeCode(SqlTypes.JSON)
  private String sheet;

  @Column(name = "release_reason")
  private String releaseReason;

  @Column(name = "recorded_at")
  private Instant recordedAt;

  @Column(name = "recorded_by")
  private UUID recordedBy;

  protected RunRow() {}

  public String sheet() {
    return sheet;
  }
}
