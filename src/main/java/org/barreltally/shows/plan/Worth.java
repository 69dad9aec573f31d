package org.barreltally.shows.plan;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.barreltally.containers.Container;
import org.barreltally.pricing.Money;
import org.barreltally.pricing.PriceList;

/**
 * What a jar sells for, and what a wrong number of it costs. A kind without a price counts by its
 * contents at what the priced ones cost on average; where nothing is priced, at one unit of money
 * for each 100 mL, which only weighs the kinds against each other.
 */
final class Worth {

  /** Half the price is left, where the owner has not said. No source: a round number to replace. */
  static final double USUAL_MARGIN = 0.5;

  /** A jar carted back costs a twentieth of its price, likewise. */
  static final double USUAL_CARTING_BACK = 0.05;

  private static final double UNPRICED_PER_ML = 0.01;
  private static final double NEXT_TO_NOTHING = 1e-6;

  private final Map<JarKind, Money> prices = new TreeMap<>();
  private final double perML;
  private final PlanQuestion.CostsSaid said;

  /**
   * @param list the prices at the table; empty where there is none
   * @param kinds with their containers
   */
  Worth(Optional<PriceList> list, Map<JarKind, Container> kinds, PlanQuestion.CostsSaid said) {
    this.said = said;
    double money = 0;
    double mL = 0;
    for (Map.Entry<JarKind, Container> kind : kinds.entrySet()) {
      Optional<Money> price =
          list.flatMap(l -> l.price(kind.getKey().container(), kind.getKey().grade()))
              .filter(p -> p.signum() > 0);
      if (price.isPresent()) {
        prices.put(kind.getKey(), price.get());
        money += amount(price.get());
        mL += kind.getValue().netML();
      }
    }
    perML = money > 0 ? money / mL : UNPRICED_PER_ML;
  }

  Optional<Money> price(JarKind jar) {
    return Optional.ofNullable(prices.get(jar));
  }

  boolean anyPriced() {
    return !prices.isEmpty();
  }

  Costs costs(JarKind jar, Container container) {
    double price = price(jar).map(Worth::amount).orElseGet(() -> perML * container.netML());
    double margin =
        said.marginPercent() == null ? USUAL_MARGIN : said.marginPercent().doubleValue() / 100;
    double back =
        said.cartingBack() == null ? USUAL_CARTING_BACK * price : amount(said.cartingBack());
    double out = said.runningOut() == null ? 0 : amount(said.runningOut());
    return new Costs(price * margin + out, Math.max(back, price * NEXT_TO_NOTHING));
  }

  private static double amount(Money money) {
    return money.amount().doubleValue();
  }
}
