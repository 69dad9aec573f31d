package org.barreltally.barrels;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.barreltally.barrels.internal.FillingRow;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Items;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.lots.Family;
import org.barreltally.lots.Holds;
import org.barreltally.lots.Lot;
import org.barreltally.lots.LotNumbers;
import org.barreltally.lots.Lots;
import org.barreltally.measure.Uncertain;

/** Pours syrup of one lot onto syrup of another in a vessel: the two become a blend lot. */
@ApplicationScoped
class Pouring {

  private final EntityManager entities;
  private final LotNumbers numbers;
  private final Lots lots;
  private final Family family;
  private final Holds holds;
  private final Items items;
  private final Ledger ledger;
  private final Days days;
  private final Ids ids;

  Pouring(
      EntityManager entities,
      LotNumbers numbers,
      Lots lots,
      Family family,
      Holds holds,
      Items items,
      Ledger ledger,
      Days days,
      Ids ids) {
    this.entities = entities;
    this.numbers = numbers;
    this.lots = lots;
    this.family = family;
    this.holds = holds;
    this.items = items;
    this.ledger = ledger;
    this.days = days;
    this.ids = ids;
  }

  /** Syrup that stands in the barrel room, ready to be poured. */
  record Portion(Lot lot, Item syrup, long grams) {}

  /**
   * Makes one lot of what is in the vessel and what is added. A hold goes with the syrup: onto a
   * held lot poured, the blend is held.
   *
   * @param brix of the blend, measured or worked out by mass
   * @param u standard uncertainty of the mass then in the vessel, grams
   * @return the blend lot
   */
  Lot pour(Barrel into, Portion added, LocalDate on, Uncertain brix, double u) {
    long there = Math.round(into.grams().value());
    List<Integer> seasons =
        Stream.concat(into.seasons().stream(), added.lot().seasons().stream()).toList();
    String code =
        numbers.nextBulk(seasons.stream().mapToInt(Integer::intValue).max().orElseThrow());
    Lot blend = lots.open(code, Lot.Kind.BULK, on, seasons, brix);
    family.join(code, Map.of(into.lot().code(), there, added.lot().code(), added.grams()));
    Item syrup = Item.syrup(ids.next(), code);
    items.add(List.of(syrup));
    entities.find(FillingRow.class, into.filling()).nowHolds(code, u);
    ledger.post(
        Movement.of(MovementKind.TOP_UP, days.during(on))
            .move(into.place(), PlaceCode.BLENDING, into.item(), there)
            .move(into.place(), PlaceCode.BLENDING, added.syrup().id(), added.grams())
            .move(PlaceCode.BLENDING, into.place(), syrup.id(), there + added.grams())
            .build());
    if (into.lot().held()) {
      holds.hold(code, "Poured onto lot " + into.lot().code() + ", which was held.");
    }
    return blend;
  }
}
