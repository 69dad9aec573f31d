package org.barreltally.bulk;

import java.util.ArrayList;
import java.util.List;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;

/** What must be said of a bulk sale; every field that is missing is named at once. */
final class BulkRules {

  private static final int NAME_MAX = 100;
  private static final int DETAILS_MAX = 500;

  private final List<FieldError> errors = new ArrayList<>();

  private BulkRules() {}

  /**
   * @throws InvalidField naming every field that is missing or too long
   */
  static void check(SellBulk said) {
    BulkRules rules = new BulkRules();
    rules.buyer(said.buyer());
    rules.side(said.ours(), "ours");
    rules.side(said.theirs(), "theirs");
    rules.side(said.agreed(), "agreed");
    if (!rules.errors.isEmpty()) {
      throw new InvalidField(rules.errors);
    }
  }

  private void buyer(SellBulk.Buyer buyer) {
    String name = buyer == null ? null : buyer.name();
    require(
        name != null && !name.isBlank() && name.length() <= NAME_MAX,
        "buyer.name",
        "Name the buyer, in at most " + NAME_MAX + " characters.");
    String details = buyer == null ? null : buyer.details();
    require(
        details == null || details.length() <= DETAILS_MAX,
        "buyer.details",
        "Keep it within " + DETAILS_MAX + " characters.");
  }

  private void side(SellBulk.Side side, String field) {
    require(
        side != null && side.weight() != null,
        field + ".weight",
        "Give the weight, for example 444.5 lb.");
    require(
        side != null && side.grade() != null,
        field + ".grade",
        "Give the grade, for example dark.");
  }

  private void require(boolean met, String field, String mend) {
    if (!met) {
      errors.add(new FieldError(field, mend));
    }
  }
}
