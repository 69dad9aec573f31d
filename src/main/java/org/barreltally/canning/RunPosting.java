package org.barreltally.canning;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.barrels.Draw;
import org.barreltally.barrels.Drawing;
import org.barreltally.barrels.Heels;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Items;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.lots.Family;
import org.barreltally.lots.Grading;
import org.barreltally.lots.Lot;
import org.barreltally.lots.LotNumbers;
import org.barreltally.lots.Lots;
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

  private static final int DECIMALS_OF_GRAMS_EACH = 6;

  private final LotNumbers numbers;
  private final Lots lots;
  private final Family family;
  private final Grading grading;
  private final Items items;
  private final Ledger ledger;
  private final Drawing drawing;
  private final Heels heels;
  private final Days days;
  private final Ids ids;

  RunPosting(
      LotNumbers numbers,
      Lots lots,
      Family family,
      Grading grading,
      Items items,
      Ledger ledger,
      Drawing drawing,
      Heels heels,
      Days days,
      Ids ids) {
    this.numbers = numbers;
    this.lots = lots;
    this.family = family;
    this.grading = grading;
    this.items = items;
    this.ledger = ledger;
    this.drawing = drawing;
    this.heels = heels;
    this.days = days;
    this.ids = ids;
  }

  /** The lot a run made and the movement that made it. */
  record Posted(Lot lot, UUID movement) {}

  /** A size packed: its jars as an item, and how many. */
  private record Packed(Item jars, int count) {
    long grams() {
      return jars.gramsEach()
          .multiply(BigDecimal.valueOf(count))
          .setScale(0, RoundingMode.HALF_UP)
          .longValueExact();
    }
  }

  Posted post(CanningOrder order, Reckoning reckoning, ColorClass grade) {
    LocalDate on = order.on();
    Lot lot =
        lots.open(
            numbers.nextPacked(on),
            Lot.Kind.PACKED,
            on,
            reckoning.batch().seasons(),
            reckoning.batch().brix());
    grading.gradeFresh(lot.code(), on, order.transmittance(), order.taste());
    family.join(lot.code(), parents(order, reckoning));
    Item syrup = Item.syrup(ids.next(), lot.code());
    List<Packed> packed = packed(lot, reckoning, grade);
    List<Item> made = new ArrayList<>(List.of(syrup));
    packed.forEach(p -> made.add(p.jars()));
    items.add(made);
    UUID movement = ledger.post(movement(order, reckoning, syrup, packed));
    drawing.taken(reckoning.batch().draws());
    if (order.heel() != null) {
      heels.keep(order.heel().keptIn(), lot, syrup, reckoning.weighedHeel(), on);
    }
    return new Posted(lot, movement);
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

  private List<Packed> packed(Lot lot, Reckoning reckoning, ColorClass grade) {
    return reckoning.fills().stream()
        .filter(fill -> fill.count() > 0)
        .map(
            fill ->
                new Packed(
                    Item.jars(
                        ids.next(),
                        lot.code(),
                        fill.container().code(),
                        BigDecimal.valueOf(fill.gramsEach())
                            .setScale(DECIMALS_OF_GRAMS_EACH, RoundingMode.HALF_UP),
                        grade.code()),
                    fill.count()))
        .toList();
  }

  private Movement movement(
      CanningOrder order, Reckoning reckoning, Item syrup, List<Packed> packed) {
    Movement.Builder movement =
        Movement.of(MovementKind.CANNING, days.during(order.on())).because(order.releaseReason());
    long left = Grams.rounded(reckoning.batch().waterGrams());
    movement.move(PlaceCode.WATER, PlaceCode.BLENDING, syrup.id(), left);
    for (Draw draw : reckoning.batch().draws()) {
      long grams = Grams.rounded(draw.grams().value());
      movement.move(draw.from().place(), PlaceCode.BLENDING, draw.from().item(), grams);
      left += grams;
    }
    for (Packed size : packed) {
      movement
          .move(PlaceCode.BLENDING, PlaceCode.PACKING, syrup.id(), size.grams())
          .move(PlaceCode.PACKING, PlaceCode.COOL_ROOM, size.jars().id(), size.count());
      left -= size.grams();
    }
    Map<String, Double> others = new LinkedHashMap<>();
    others.put(PlaceCode.FILTER, reckoning.filter());
    others.put(PlaceCode.OVERFILL, reckoning.overfill());
    others.put(PlaceCode.BROKEN, reckoning.broken());
    others.put(PlaceCode.BARREL_ROOM, reckoning.heel());
    for (Map.Entry<String, Double> other : others.entrySet()) {
      long grams = Grams.rounded(other.getValue());
      movement.move(PlaceCode.BLENDING, other.getKey(), syrup.id(), grams);
      left -= grams;
    }
    return movement.move(PlaceCode.BLENDING, PlaceCode.UNEXPLAINED, syrup.id(), left).build();
  }
}
