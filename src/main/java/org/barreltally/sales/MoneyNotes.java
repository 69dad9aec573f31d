package org.barreltally.sales;

import java.util.List;
import org.barreltally.pricing.Money;

/** What is odd about the money of a sale. */
final class MoneyNotes {

  private MoneyNotes() {}

  static void add(SaidSale said, Price price, Settled money, List<Note> notes) {
    for (int n = 0; n < price.each().size(); n++) {
      if (price.each().get(n) == null) {
        notes.add(
            new Note(
                n + 1,
                "no-price",
                "No price list of the day has a price for %s, and none was said."
                    .formatted(said.lines().get(n).container())));
      }
    }
    if (said.paid() == null) {
      notes.add(new Note(0, "paid-unsaid", "Nothing was said of how it was paid."));
    } else if (money.difference() != null && money.difference().signum() != 0) {
      Money off = money.difference();
      Money none = Money.none(off.currency());
      notes.add(
          new Note(
              0,
              "paid-differs",
              "%s was due; what was paid is %s %s."
                  .formatted(
                      price.total(),
                      off.signum() > 0 ? off : none.minus(off),
                      off.signum() > 0 ? "more" : "less")));
    }
  }
}
