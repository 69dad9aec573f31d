package org.barreltally.barrels.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.util.UUID;
import org.barreltally.barrels.Material;

/** A vessel: its tag, and which filling is in it now or was last. */
@Entity
@Table(name = "vessels")
public class VesselRow {
  @Id private String tag;

  @Column(updatable = false)
  private String kind;

  private String material;

  @Column(name = "capacity_ml")
  private BigDecimal capacityML;

  private UUID filling;
  private boolean washed = true;

  protected VesselRow() {}

  public VesselRow(String tag, boolean heel, Material material) {
    this.tag = tag;
    this.kind = heel ? "heel" : "barrel";
    this.material = material.code();
  }

  public boolean isHeel() {
    return "heel".equals(kind);
  }

  public UUID filling() {
    return filling;
  }

  public BigDecimal capacityML() {
    return capacityML;
  }

  public boolean isWashed() {
    return washed;
  }

  public void describe(Material material, BigDecimal capacityML) {
    this.material = material.code();
    if (capacityML != null) {
      this.capacityML = capacityML;
    }
  }

  public void fill(UUID filling) {
    this.filling = filling;
    this.washed = false;
  }

  public void wash() {
    this.washed = true;
  }
}
