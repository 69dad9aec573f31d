package org.barreltally.barrels;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.barreltally.barrels.internal.BarrelQuery;
import org.barreltally.barrels.internal.FillingRow;
import org.barreltally.barrels.internal.VesselRow;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.lots.Lot;
import org.barreltally.measure.Blend;
import org.barreltally.measure.Uncertain;

/**
 * Keeps what is left of a run in a named vessel. It becomes a parent of whatever is made with it
 * next, until the vessel is emptied and washed.
 */
@ApplicationScoped
public class Heels {

  private final Vessels vessels;
  private final Pouring pouring;
  private final BarrelQuery query;
  private final EntityManager entities;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  public Heels(
      Vessels vessels,
      Pouring pouring,
      BarrelQuery query,
      EntityManager entities,
      Days days,
      Ids ids,
      RecordedBy recordedBy) {
    this.vessels = vessels;
    this.pouring = pouring;
    this.query = query;
    this.entities = entities;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  /** Checks the vessel for a heel before anything is written, and makes it known. */
  public void prepare(String tag, String field) {
    vessels.known(tag, true, Material.STAINLESS, field);
  }

  /**
   * The lot whose film is still in the vessel, because it was emptied and not washed.
   *
   * @return empty if it is washed, never used, or still holds syrup
   */
  public Optional<String> unwashed(String tag) {
    return vessels
        .locked(tag)
        .filter(vessel -> !vessel.isWashed())
        .flatMap(vessel -> vessels.contents(tag))
        .filter(left -> left.state() == BarrelState.DRAINED)
        .map(left -> left.lot().code());
  }

  /**
   * Puts a heel, already posted to the barrel room, into its vessel. On top of an older heel the
   * two become a blend lot.
   *
   * @param grams with the standard uncertainty
   */
  @Transactional
  public void keep(String tag, Lot lot, Item syrup, Uncertain grams, LocalDate on) {
    VesselRow vessel = vessels.locked(tag).orElseThrow();
    Optional<Barrel> older =
        vessels.contents(tag).filter(barrel -> barrel.state() != BarrelState.DRAINED);
    long whole = Math.round(grams.value());
    if (older.isPresent()) {
      Barrel into = older.get();
      double brix =
          Blend.brix(
              List.of(
                  new Blend.Part(into.grams().value(), into.lot().brix().value(), null),
                  new Blend.Part(whole, lot.brix().value(), null)));
      pouring.pour(
          into,
          new Pouring.Portion(lot, syrup, whole),
          on,
          new Uncertain(brix, Math.max(into.lot().brix().u(), lot.brix().u())),
          Math.hypot(into.grams().u(), grams.u()));
      return;
    }
    vessels.put(
        vessel,
        new FillingRow(
            ids.next(),
            tag,
            PlaceCode.BARREL_ROOM,
            on,
            lot.seasons().get(lot.seasons().size() - 1),
            lot.code(),
            grams.u(),
            days.now(),
            recordedBy.user()));
  }
}
