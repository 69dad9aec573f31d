package org.barreltally.shows.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.measure.Dimension;
import org.barreltally.measure.Quantity;
import org.barreltally.pricing.CurrencyMismatch;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;

/** What may be asked of a plan. */
final class PlanRules {

  private static final int MOST_LINES = 200;
  private static final int MOST_VISITORS = 10_000_000;
  private static final int MOST_REFILLS = 20;

  private final List<FieldError> errors = new ArrayList<>();

  private PlanRules() {}

  /**
   * @param currency of the prices
   * @throws NegativeCost if a cost or the margin is below zero
   * @throws CurrencyMismatch if a cost is in another currency than the prices
   * @throws InvalidField naming every field that needs mending
   */
  static void check(PlanQuestion asked, String currency) {
    PlanRules rules = new PlanRules();
    rules.costs(asked.costs(), currency);
    rules.whole(asked.visitors(), 1, MOST_VISITORS, "visitors");
    rules.whole(asked.refills(), 0, MOST_REFILLS, "refills");
    rules.mass(asked.vehicleLoad(), "vehicleLoad");
    rules.mass(asked.otherLoad(), "otherLoad");
    rules.within(asked.displayPercent(), 0, 99, "displayPercent");
    rules.within(asked.jarsPer100Visitors(), 0, 100_000, "jarsPer100Visitors");
    rules.lines(asked);
    if (!rules.errors.isEmpty()) {
      throw new InvalidField(rules.errors);
    }
  }

  private void costs(PlanQuestion.CostsSaid costs, String currency) {
    BigDecimal margin = costs.marginPercent();
    if (margin != null && margin.signum() < 0) {
      throw new NegativeCost(margin.toPlainString() + " %", "costs.marginPercent");
    }
    if (margin != null && (margin.signum() == 0 || margin.doubleValue() > 100)) {
      errors.add(new FieldError("costs.marginPercent", "Give a percent above 0, at most 100."));
    }
    cost(costs.runningOut(), currency, "costs.runningOut");
    cost(costs.cartingBack(), currency, "costs.cartingBack");
  }

  private static void cost(Money cost, String currency, String field) {
    if (cost == null) {
      return;
    }
    if (cost.signum() < 0) {
      throw new NegativeCost(cost, field);
    }
    if (!cost.currency().equals(currency)) {
      throw new CurrencyMismatch(cost.currency(), currency, field);
    }
  }

  private void lines(PlanQuestion asked) {
    if (asked.firstGuess().size() > MOST_LINES
        || asked.footprints().size() > MOST_LINES
        || asked.only().size() > MOST_LINES) {
      throw new InvalidField("only", "Give at most " + MOST_LINES + " lines in a list.");
    }
    for (int n = 0; n < asked.firstGuess().size(); n++) {
      PlanQuestion.Guess guess = asked.firstGuess().get(n);
      String path = "firstGuess[" + n + "]";
      if (guess.container() == null || guess.grade() == null || guess.per100Visitors() == null) {
        errors.add(new FieldError(path, "Give container, grade and per100Visitors."));
      }
      within(guess.per100Visitors(), 0, 100_000, path + ".per100Visitors");
    }
    for (int n = 0; n < asked.footprints().size(); n++) {
      PlanQuestion.Room room = asked.footprints().get(n);
      String path = "footprints[" + n + "]";
      if (room.container() == null || room.widthInches() == null || room.depthInches() == null) {
        errors.add(new FieldError(path, "Give container, widthInches and depthInches."));
      }
      within(room.widthInches(), 0.5, 100, path + ".widthInches");
      within(room.depthInches(), 0.5, 100, path + ".depthInches");
    }
    for (int n = 0; n < asked.only().size(); n++) {
      if (asked.only().get(n).container() == null) {
        errors.add(new FieldError("only[" + n + "].container", "Name the container."));
      }
    }
  }

  private void whole(Integer said, int least, int most, String field) {
    if (said != null && (said < least || said > most)) {
      errors.add(
          new FieldError(field, "Give a whole number from %d to %d.".formatted(least, most)));
    }
  }

  private void within(BigDecimal said, double least, double most, String field) {
    if (said != null && (said.doubleValue() < least || said.doubleValue() > most)) {
      errors.add(
          new FieldError(
              field,
              "Give a number from %s to %s."
                  .formatted(
                      new BigDecimal(Double.toString(least)).stripTrailingZeros().toPlainString(),
                      new BigDecimal(Double.toString(most)).stripTrailingZeros().toPlainString())));
    }
  }

  private void mass(Quantity said, String field) {
    if (said != null && (said.unit().dimension() != Dimension.MASS || said.signum() < 0)) {
      errors.add(new FieldError(field, "Give a weight of 0 or more, in lb, oz, kg or g."));
    }
  }
}
