package org.barreltally.lots.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.lots.Lot;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Taste;
import org.barreltally.measure.Uncertain;
import org.hibernate.annotations.DynamicUpdate;

/** A lot in the database: fixed facts, and a snapshot of its newest grading and hold. */
@Entity
@Table(name = "lots")
@DynamicUpdate
public class LotRow {

  @Id private String code;

  @Column(updatable = false)
  private String kind;

  @Column(name = "made_on", updatable = false)
  private LocalDate madeOn;

  @Column(updatable = false, columnDefinition = "integer[]")
  private List<Integer> seasons;

  @Column(updatable = false)
  private double brix;

  @Column(name = "brix_u", updatable = false)
  private double brixUncertainty;

  private String grade;
  private Double transmittance;
  private String taste;
  private boolean held;

  protected LotRow() {}

  public LotRow(
      String code, Lot.Kind kind, LocalDate madeOn, List<Integer> seasons, Uncertain brix) {
    this.code = code;
    this.kind = kind.code();
    this.madeOn = madeOn;
    this.seasons = seasons.stream().distinct().sorted().toList();
    this.brix = brix.value();
    this.brixUncertainty = brix.u();
  }

  public void graded(ColorClass grade, double transmittance, Taste taste) {
    this.grade = grade.code();
    this.transmittance = transmittance;
    this.taste = taste.code();
  }

  public void held(boolean held) {
    this.held = held;
  }

  public Lot asLot() {
    return new Lot(
        code,
        Lot.Kind.of(kind),
        madeOn,
        List.copyOf(seasons),
        new Uncertain(brix, brixUncertainty),
        grade == null ? null : ColorClass.of(grade),
        transmittance,
        taste == null ? null : Taste.of(taste),
        held);
  }
}
