package org.barreltally.gifts;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.pricing.Money;

/** What a gift order must be; every field at fault is named at once. */
final class OrderRules {

  private static final int NAME_MAX = 100;
  private static final int CONTACT_MAX = 200;
  private static final int DETAILS_MAX = 500;

  private final Faults faults;

  OrderRules(Faults faults) {
    this.faults = faults;
  }

  /** The buyer with a tidied address. */
  Buyer buyer(Buyer said) {
    if (said == null) {
      faults.require(false, "buyer", "Say who orders, at least by name.");
      return null;
    }
    faults.text(said.name(), NAME_MAX, false, "buyer.name", "Give the buyer's name.");
    faults.text(said.email(), CONTACT_MAX, true, "buyer.email", "");
    faults.text(said.phone(), CONTACT_MAX, true, "buyer.phone", "");
    faults.require(
        said.details() == null || said.details().length() <= DETAILS_MAX,
        "buyer.details",
        "Keep it within " + DETAILS_MAX + " characters.");
    Address address =
        said.address() == null
            ? null
            : new AddressRules(faults).read(said.address(), "buyer.address");
    return new Buyer(said.name(), said.email(), said.phone(), address, said.details());
  }

  /** The recipients that were found right, in their order; the others are noted. */
  List<CheckedRecipient> recipients(List<Recipient> said, RecipientRules rules) {
    int number = said == null ? 0 : said.size();
    faults.require(number > 0, "recipients", "Give at least one recipient.");
    faults.require(
        number <= RecipientRules.RECIPIENTS_MAX,
        "recipients",
        "An order takes at most %d recipients; these are %d. Make more than one order of them."
            .formatted(RecipientRules.RECIPIENTS_MAX, number));
    if (number == 0 || number > RecipientRules.RECIPIENTS_MAX) {
      return List.of();
    }
    List<CheckedRecipient> checked = new ArrayList<>();
    for (int i = 0; i < said.size(); i++) {
      checked.add(rules.read(said.get(i), "recipients[" + i + "]"));
    }
    return checked;
  }

  void money(Money deposit, BigDecimal percent, String currency) {
    if (deposit != null) {
      faults.require(
          deposit.signum() >= 0, "deposit", "Give what was paid, not less than nothing.");
      faults.require(
          currency == null || currency.equals(deposit.currency()),
          "deposit",
          "Give it in " + currency + ", as the boxes are priced.");
    }
    faults.require(
        percent == null
            || percent.signum() >= 0
                && percent.compareTo(BigDecimal.valueOf(100)) <= 0
                && percent.stripTrailingZeros().scale() <= 2,
        "depositPercent",
        "Give a percentage from 0 to 100 with at most two decimals.");
  }
}
