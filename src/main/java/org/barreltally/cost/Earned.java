package org.barreltally.cost;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.barreltally.cost.flow.Line;
import org.barreltally.cost.internal.TakingsRows.Settled;
import org.barreltally.pricing.Money;
import org.barreltally.shows.Show;

/** Goods and money of one row of margins. */
final class Earned {

  private static final Set<String> BUYERS = Set.of("customer", "bulk-buyer");

  private final Money none;
  Money takings;
  Money goods;
  private Money lost;
  long count;

  Earned(Reckoning.Of of) {
    this.none = Money.none(of.currency());
    this.takings = none;
    this.goods = none;
    this.lost = none;
  }

  /** Whether a buyer has it, at home or in bulk. */
  static boolean isByBuyer(Line line) {
    return BUYERS.contains(line.account());
  }

  void add(Line line, Money cost) {
    if (isByBuyer(line)) {
      goods = goods.plus(cost);
      count += line.pool().container() == null ? 0 : line.amount();
    } else {
      lost = lost.plus(cost);
    }
  }

  List<Margins.Charge> charges() {
    return lost.signum() == 0 ? List.of() : List.of(new Margins.Charge("goods-lost", lost));
  }

  /** The row of a show whose table's goods these are; none if nothing is to be told. */
  Optional<Margins.Row> ofShow(Show show, Settled told, Money spent) {
    List<Margins.Charge> charges = new ArrayList<>();
    charge(charges, "fee", told.fee());
    charge(charges, "travel", told.travel());
    charge(charges, "helper", told.helper());
    charge(charges, "spent", spent);
    charges.addAll(charges());
    if (told.takings().signum() == 0 && goods.signum() == 0 && charges.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        Margins.Row.of(
            "show", show.id().toString(), show.starts(), count, told.takings(), goods, charges));
  }

  /** Adds a charge unless it is nothing. */
  static void charge(List<Margins.Charge> charges, String what, Money amount) {
    if (amount != null && amount.signum() != 0) {
      charges.add(new Margins.Charge(what, amount));
    }
  }
}
