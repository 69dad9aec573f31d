package org.barreltally.barrels;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Locale;
import org.barreltally.barrels.internal.FillingRow;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.measure.Grams;
import org.barreltally.measure.Quantity;

/** Takes syrup out of a vessel that goes into no run: thrown away, or drawn as a sample. */
@ApplicationScoped
public class Emptying {

  /** Why it leaves; the outside account of that name takes it. */
  public enum Cause {
    DISCARDED,
    SAMPLED;

    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  private final Vessels vessels;
  private final Drawing drawing;
  private final Ledger ledger;
  private final Days days;
  private final EntityManager entities;
  private final Barrels barrels;

  public Emptying(
      Vessels vessels,
      Drawing drawing,
      Ledger ledger,
      Days days,
      EntityManager entities,
      Barrels barrels) {
    this.vessels = vessels;
    this.drawing = drawing;
    this.ledger = ledger;
    this.days = days;
    this.entities = entities;
    this.barrels = barrels;
  }

  /**
   * Takes out a weight, or everything. Held syrup may be thrown away.
   *
   * @param weight as a scale reads in air; null for all of it
   * @throws MoreThanItHolds if it does not hold that much
   */
  @Transactional
  public Barrel takeOut(String tag, LocalDate on, Quantity weight, Cause cause, String reason) {
    days.happened(on, "on");
    Barrel barrel = vessels.filled(tag, on);
    Draw draw = drawing.part(barrel, weight);
    ledger.post(
        Movement.of(MovementKind.WRITE_OFF, days.during(on))
            .because(reason)
            .move(barrel.place(), cause.code(), barrel.item(), Grams.rounded(draw.grams().value()))
            .build());
    double left = draw.all() ? 0 : Math.hypot(barrel.grams().u(), draw.grams().u());
    entities.find(FillingRow.class, barrel.filling()).massUncertainty(left);
    return barrels.at(tag);
  }
}
