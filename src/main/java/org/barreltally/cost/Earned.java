package org.barreltally.cost;

import java.util.List;
import java.util.Set;
import org.barreltally.cost.flow.Line;
import org.barreltally.pricing.Money;

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
}
