package org.barreltally.cost;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.barreltally.pricing.CurrencyMismatch;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;

/** What a cost must say. */
final class CostRules {

  static final int NOTE_MAX = 500;

  private static final BigDecimal HOURS_MAX = new BigDecimal("100000");
  private static final int PER_MAX = 1_000_000;
  private static final int SEASON_MIN = 1900;
  private static final int SEASON_MAX = 2999;

  private final List<FieldError> errors = new ArrayList<>();

  private CostRules() {}

  /**
   * What the cost comes to.
   *
   * @param currency of the farm
   * @throws InvalidField naming every field that needs mending
   * @throws CurrencyMismatch if it is of another currency
   */
  static Money amount(EnterCost said, String currency) {
    CostRules rules = new CostRules();
    rules.require(
        said.kind() != null,
        "kind",
        "Give one of fuel, filter-aid, membrane, labour, fee, syrup, jar, cap, label, carton, other.");
    rules.belongs(said);
    rules.packing(said);
    rules.money(said);
    rules.require(
        said.note() == null || said.note().length() <= NOTE_MAX,
        "note",
        "Keep the note within " + NOTE_MAX + " characters.");
    if (!rules.errors.isEmpty()) {
      throw new InvalidField(rules.errors);
    }
    return said.amount() != null
        ? checked(said.amount(), currency, "amount")
        : nothingLeft(checked(said.rate(), currency, "rate").times(said.hours()));
  }

  private void belongs(EnterCost said) {
    long named =
        Stream.of(
                said.season(), said.lot(), said.run(), said.container(), said.supply(), said.show())
            .filter(Objects::nonNull)
            .count();
    require(
        named == 1,
        "season",
        "Say what it belongs to: one of season, lot, run, container, supply, show, and no other.");
    require(
        said.season() == null || said.season() >= SEASON_MIN && said.season() <= SEASON_MAX,
        "season",
        "Give the crop year, for example 2026.");
  }

  private void packing(EnterCost said) {
    boolean packing = said.container() != null || said.supply() != null;
    require(
        !packing || said.kind() == null || said.kind().isOfPacking(),
        "kind",
        "For a container or supply give one of jar, cap, label, carton, other.");
    require(
        said.per() == null || packing,
        "per",
        "Leave per out: only the price of a container or supply is for so many of it.");
    require(
        said.per() == null || said.per() >= 1 && said.per() <= PER_MAX,
        "per",
        "Give a whole number from 1 to " + PER_MAX + ", or leave it out for one.");
    require(
        !packing || said.hours() == null,
        "hours",
        "A container or supply has a price: give its amount, not hours.");
  }

  private void money(EnterCost said) {
    boolean hourly = said.hours() != null || said.rate() != null;
    require(
        (said.amount() != null) != hourly, "amount", "Give either the amount, or hours and rate.");
    require(
        said.amount() == null || said.amount().signum() > 0, "amount", "Give more than nothing.");
    if (hourly) {
      require(
          said.hours() != null
              && said.hours().signum() > 0
              && said.hours().compareTo(HOURS_MAX) <= 0
              && said.hours().stripTrailingZeros().scale() <= 2,
          "hours",
          "Give the hours with at most two decimals, for example 12.5.");
      require(
          said.rate() != null && said.rate().signum() > 0,
          "rate",
          "Give what an hour costs, for example 18.00.");
    }
  }

  private static Money nothingLeft(Money amount) {
    if (amount.signum() == 0) {
      throw new InvalidField("hours", "Hours and rate come to nothing. Check both.");
    }
    return amount;
  }

  private static Money checked(Money money, String currency, String field) {
    if (!money.currency().equals(currency)) {
      throw new CurrencyMismatch(money.currency(), currency, field);
    }
    return money;
  }

  /** Why a cost is taken back. */
  static String reason(String reason) {
    if (reason == null || reason.isBlank() || reason.length() > NOTE_MAX) {
      throw new InvalidField("reason", "Say why, in at most " + NOTE_MAX + " characters.");
    }
    return reason.strip();
  }

  private void require(boolean met, String field, String mend) {
    if (!met) {
      errors.add(new FieldError(field, mend));
    }
  }
}
