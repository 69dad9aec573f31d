package org.barreltally.barrels.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.barreltally.barrels.BarrelState;

/** One filling of a vessel, from the night it was filled until it is drained. */
@Entity
@Table(name = "fillings")
public class FillingRow {
  @Id private UUID id;

  @Column(updatable = false)
  private String tag;

  @Column(updatable = false)
  private String place;

  @Column(name = "filled_on", updatable = false)
  private LocalDate filledOn;

  @Column(updatable = false)
  private int season;

  private String lot;

  /** Follows the balance: written by {@link FillingStates} alone once the row is there. */
  @Column(updatable = false)
  private String state = BarrelState.FULL.code();

  @Column(name = "mass_u")
  private double massUncertainty;

  @Column(name = "tare_g")
  private Long tareGrams;

  @Column(name = "dipstick_gap_ml", updatable = false)
  private Double gapML;

  @Column(name = "dipstick_gap_beyond", updatable = false)
  private Boolean gapBeyond;

  @Column(name = "recorded_at", updatable = false)
  private Instant recordedAt;

  @Column(name = "recorded_by", updatable = false)
  private UUID recordedBy;

  protected FillingRow() {}

  public FillingRow(
      UUID id,
      String tag,
      String place,
      LocalDate filledOn,
      int season,
      String lot,
      double massUncertainty,
      Instant recordedAt,
      UUID recordedBy) {
    this.id = id;
    this.tag = tag;
    this.place = place;
    this.filledOn = filledOn;
    this.season = season;
    this.lot = lot;
    this.massUncertainty = massUncertainty;
    this.recordedAt = recordedAt;
    this.recordedBy = recordedBy;
  }

  public UUID id() {
    return id;
  }

  public void tare(Long grams) {
    this.tareGrams = grams;
  }

  public void gap(double milliliters, boolean beyond) {
    this.gapML = milliliters;
    this.gapBeyond = beyond;
  }

  /** The syrup in it became a lot of its own, for it was topped up. */
  public void nowHolds(String lot, double massUncertainty) {
    this.lot = lot;
    this.massUncertainty = massUncertainty;
  }

  public void massUncertainty(double grams) {
    this.massUncertainty = grams;
  }
}
