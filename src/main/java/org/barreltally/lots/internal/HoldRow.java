package org.barreltally.lots.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** One step of holding or releasing a lot: never changed. */
@Entity
@Immutable
@Table(name = "lot_holds")
public class HoldRow {
  @Id private UUID id;
  private String lot;
  private String step;
  private String reason;

  @Column(name = "recorded_at")
  private Instant recordedAt;

  @Column(name = "recorded_by")
  private UUID recordedBy;

  protected HoldRow() {}

  public HoldRow(
      UUID id, String lot, boolean held, String reason, Instant recordedAt, UUID recordedBy) {
    this.id = id;
    this.lot = lot;
    this.step = held ? "held" : "released";
    this.reason = reason;
    this.recordedAt = recordedAt;
    this.recordedBy = recordedBy;
  }
}
