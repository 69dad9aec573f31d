package org.barreltally.canning;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.barreltally.barrels.Draw;
import org.barreltally.barrels.Drawing;
import org.barreltally.barrels.Heels;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.lots.LotNumbers;
import org.barreltally.lots.PackedLots;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Grams;

/**
 * Posts a run as one movement. The lots drawn go into the blending account gram for gram and come
 * out as the new lot; what goes into jars passes the packing account, where grams become pieces of
 * grams fixed here; the rest goes to the filter, the broken, the overfill, the heel's vessel, and
 * what is left over to unexplained.
 */
@ApplicationScoped
class RunPosting {

  private final LotNumbers numbers;
  private final PackedLots lots;
  private final Ledger ledger;
  private final Drawing drawing;
  private final Heels heels;
  private final Days days;
  private final Ids ids;

  RunPosting(
      LotNumbers numbers,
      PackedLots lots,
      Ledger ledger,
      Drawing drawing,
      Heels heels,
      Days days,
      Ids ids) {
    this.numbers = numbers;
    this.lots = lots;
    this.ledger = ledger;
    this.drawing = drawing;
    this.heels = heels;
    this.days = days;
    this.ids = ids;
  }

  /** Asks for the lot's number and for the locks; send {@code ask} before the run is written. */
  PendingRun begin(CanningOrder order, Reckoning reckoning, ColorClass grade, Bundle ask) {
    UUID syrup = ids.next();
    List<PendingRun.Packed> packed =
        reckoning.fills().stream()
            .filter(fill -> fill.count() > 0)
            .map(fill -> PendingRun.Packed.of(ids.next(), fill))
            .toList();
    Set<UUID> made = new HashSet<>(Set.of(syrup));
    packed.forEach(size -> made.add(size.jars()));
    return new PendingRun(
        new PendingRun.Books(lots, drawing),
        order,
        reckoning,
        grade,
        parents(order, reckoning),
        syrup,
        packed,
        numbers.nextPacked(order.on(), ask),
        ledger.begin(movement(order, reckoning, syrup, packed), made, ask));
  }

  /** Grams by parent lot; an unwashed heel vessel links its last lot with none. */
  private Map<String, Long> parents(CanningOrder order, Reckoning reckoning) {
    Map<String, Long> parents = new LinkedHashMap<>();
    for (Draw draw : reckoning.batch().draws()) {
      parents.put(draw.from().lot().code(), Grams.rounded(draw.grams().value()));
    }
    if (order.heel() != null) {
      heels.unwashed(order.heel().keptIn()).ifPresent(film -> parents.putIfAbsent(film, 0L));
    }
    return parents;
  }

  private Movement movement(
      CanningOrder order, Reckoning reckoning, UUID syrup, List<PendingRun.Packed> packed) {
    Movement.Builder movement =
        Movement.of(MovementKind.CANNING, days.during(order.on())).because(order.releaseReason());
    long left = Grams.rounded(reckoning.batch().waterGrams());
    movement.move(PlaceCode.WATER, PlaceCode.BLENDING, syrup, left);
    for (Draw draw : reckoning.batch().draws()) {
      long grams = Grams.rounded(draw.grams().value());
      movement.move(draw.from().place(), PlaceCode.BLENDING, draw.from().item(), grams);
      left += grams;
    }
    for (PendingRun.Packed size : packed) {
      movement
          .move(PlaceCode.BLENDING, PlaceCode.PACKING, syrup, size.grams())
          .move(PlaceCode.PACKING, PlaceCode.COOL_ROOM, size.jars(), size.count());
      left -= size.grams();
    }
    Map<String, Double> others = new LinkedHashMap<>();
    others.put(PlaceCode.FILTER, reckoning.filter());
    others.put(PlaceCode.OVERFILL, reckoning.overfill());
    others.put(PlaceCode.BROKEN, reckoning.broken());
    others.put(PlaceCode.BARREL_ROOM, reckoning.heel());
    for (Map.Entry<String, Double> other : others.entrySet()) {
      long grams = Grams.rounded(other.getValue());
      movement.move(PlaceCode.BLENDING, other.getKey(), syrup, grams);
      left -= grams;
    }
    return movement.move(PlaceCode.BLENDING, PlaceCode.UNEXPLAINED, syrup, left).build();
  }
}
