package org.barreltally.canning;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.barrels.Drawing;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.PendingMovement;
import org.barreltally.lots.Lot;
import org.barreltally.lots.LotNumbers;
import org.barreltally.lots.PackedLots;
import org.barreltally.measure.ColorClass;

/** A run whose rows are locked and whose lot has a number: all that is left is to write it. */
final class PendingRun {

  private static final int DECIMALS_OF_GRAMS_EACH = 6;

  /** Jars of a size about to be packed, of grams fixed here, under the id they will have. */
  record Packed(UUID jars, String container, BigDecimal gramsEach, int count) {
    static Packed of(UUID jars, Fill fill) {
      return new Packed(
          jars,
          fill.container().code(),
          BigDecimal.valueOf(fill.gramsEach())
              .setScale(DECIMALS_OF_GRAMS_EACH, RoundingMode.HALF_UP),
          fill.count());
    }

    long grams() {
      return gramsEach
          .multiply(BigDecimal.valueOf(count))
          .setScale(0, RoundingMode.HALF_UP)
          .longValueExact();
    }
  }

  /** Where its parts are written. */
  record Books(PackedLots lots, Drawing drawing) {}

  private final Books books;
  private final CanningOrder order;
  private final Reckoning reckoning;
  private final ColorClass grade;
  private final Map<String, Long> parents;
  private final UUID syrup;
  private final List<Packed> packed;
  private final LotNumbers.Next number;
  private final PendingMovement movement;

  PendingRun(
      Books books,
      CanningOrder order,
      Reckoning reckoning,
      ColorClass grade,
      Map<String, Long> parents,
      UUID syrup,
      List<Packed> packed,
      LotNumbers.Next number,
      PendingMovement movement) {
    this.books = books;
    this.order = order;
    this.reckoning = reckoning;
    this.grade = grade;
    this.parents = parents;
    this.syrup = syrup;
    this.packed = packed;
    this.number = number;
    this.movement = movement;
  }

  UUID movement() {
    return movement.id();
  }

  /** The syrup of the new lot that is not in jars. */
  Item syrup() {
    return Item.syrup(syrup, number.code());
  }

  /** Adds the lot, its items, the movement and what it leaves in the vessels. */
  Lot write(Bundle write) {
    Lot lot =
        new Lot(
            number.code(),
            Lot.Kind.PACKED,
            order.on(),
            reckoning.batch().seasons(),
            reckoning.batch().brix(),
            grade,
            order.transmittance(),
            order.taste(),
            false);
    books.lots().open(lot, parents, write);
    List<Item> made = new ArrayList<>(List.of(syrup()));
    packed.forEach(
        p -> made.add(Item.jars(p.jars(), lot.code(), p.container(), p.gramsEach(), grade.code())));
    movement.write(made, write);
    books.drawing().taken(reckoning.batch().draws(), write);
    return lot;
  }
}
