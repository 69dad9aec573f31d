package org.barreltally.barrels;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import org.barreltally.barrels.internal.FillingRow;
import org.barreltally.barrels.internal.ReadingLog;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.measure.Grams;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Uncertain;
import org.barreltally.measure.Unit;

/**
 * Weighs a barrel again. The newest weighing counts: the book follows it and keeps the difference.
 */
@ApplicationScoped
public class Reweighing {

  /**
   * What a weighing found.
   *
   * @param grams more (or, negative, less) than the book said
   * @param beyondUncertainty whether that is more than both weighings may be off
   */
  public record Found(Barrel barrel, double grams, boolean beyondUncertainty) {}

  private final Vessels vessels;
  private final Readings readings;
  private final ReadingLog log;
  private final Ledger ledger;
  private final Days days;
  private final EntityManager entities;
  private final Barrels barrels;

  public Reweighing(
      Vessels vessels,
      Readings readings,
      ReadingLog log,
      Ledger ledger,
      Days days,
      EntityManager entities,
      Barrels barrels) {
    this.vessels = vessels;
    this.readings = readings;
    this.log = log;
    this.ledger = ledger;
    this.days = days;
    this.entities = entities;
    this.barrels = barrels;
  }

  /**
   * @param said its tare may be null: then the stored one counts
   * @throws Drained if nothing is in it
   */
  @Transactional
  public Found weigh(String tag, LocalDate on, Weighing said) {
    days.happened(on, "on");
    Barrel barrel = vessels.filled(tag, on);
    Weighing weighing = withTare(barrel, said);
    Uncertain now =
        Readings.under("weighing", () -> readings.weighed(weighing, barrel.lot().brix()));
    Brim.check(tag, vessels.capacityML(tag), now, barrel.lot().brix().value(), "weighing.gross");
    FillingRow row = entities.find(FillingRow.class, barrel.filling());
    row.massUncertainty(now.u());
    row.tare(Math.round(weighing.tare().doubleIn(Unit.G)));
    log.weighing(new ReadingLog.Of(barrel.filling(), barrel.lot().code(), on), weighing, now);
    long difference = Grams.rounded(now.value()) - Math.round(barrel.grams().value());
    Movement.Builder movement =
        Movement.of(MovementKind.WEIGHING, days.during(on))
            .move(PlaceCode.UNEXPLAINED, barrel.place(), barrel.item(), difference);
    if (!movement.movesNothing()) {
      ledger.post(movement.build());
    }
    return new Found(barrels.at(tag), difference, now.differsFrom(barrel.grams()));
  }

  /** The weighing with the tare it was filled with, where none is said. */
  static Weighing withTare(Barrel barrel, Weighing said) {
    if (said == null || said.tare() != null) {
      return said == null ? new Weighing(null, null) : said;
    }
    if (barrel.tareGrams() == null) {
      throw new TareUnknown(barrel.tag());
    }
    return new Weighing(said.gross(), Quantity.of(barrel.tareGrams(), Unit.G));
  }
}
