package org.barreltally.shows.settling;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;

/** The form of what is said with a settlement. */
final class SettleRules {

  private static final BigDecimal HOURS_MAX = BigDecimal.valueOf(1000);
  private static final int NOTE_MAX = 500;

  private final List<FieldError> errors = new ArrayList<>();

  private SettleRules() {}

  static void check(SettleShow said) {
    SettleRules rules = new SettleRules();
    rules.money(said.payouts(), "payouts");
    rules.money(said.travel(), "travel");
    rules.money(said.helper(), "helper");
    rules.require(
        said.hours() == null || said.hours().signum() > 0 && said.hours().compareTo(HOURS_MAX) <= 0,
        "hours",
        "Give the hours the table sold, above 0 and at most 1,000.");
    rules.require(
        said.note() == null || said.note().length() <= NOTE_MAX,
        "note",
        "Keep it within " + NOTE_MAX + " characters.");
    if (!rules.errors.isEmpty()) {
      throw new InvalidField(rules.errors);
    }
  }

  private void money(Money money, String field) {
    require(
        money == null || money.signum() >= 0, field + ".amount", "Give an amount of 0 or more.");
  }

  private void require(boolean met, String field, String mend) {
    if (!met) {
      errors.add(new FieldError(field, mend));
    }
  }
}
