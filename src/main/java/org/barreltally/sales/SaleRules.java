package org.barreltally.sales;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.pricing.CurrencyMismatch;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;

/** The form of a sale; every field at fault is named at once. What happened is not judged here. */
final class SaleRules {

  private static final BigDecimal PRICE_MAX = BigDecimal.valueOf(1_000_000);
  private static final int CODE_MAX = 40;

  private final List<FieldError> errors = new ArrayList<>();
  private final String currency;

  private SaleRules(String currency) {
    this.currency = currency;
  }

  /**
   * @param path under which the sale stands in the request, with a dot at its end; empty for a sale
   *     of its own
   * @throws InvalidField naming every field that is missing, malformed or out of its range
   * @throws CurrencyMismatch if money is not in the farm's currency
   */
  static void check(SaidSale said, String path, String currency) {
    SaleRules rules = new SaleRules(currency);
    if (said == null) {
      throw new InvalidField(path + "id", "Give the sale.");
    }
    rules.require(said.id() != null, path + "id", "Give the id that the device made, a UUID.");
    rules.require(
        said.at() != null,
        path + "at",
        "Give the time of the sale, for example 2026-10-03T14:05:00Z.");
    rules.lines(said.lines(), path + "lines");
    rules.require(
        said.reason() == null || said.reason().length() <= SaidSale.REASON_MAX,
        path + "reason",
        "Say it in at most " + SaidSale.REASON_MAX + " characters.");
    if (said.paid() != null) {
      rules.money(said.paid().cash(), path + "paid.cash");
      rules.money(said.paid().card(), path + "paid.card");
      rules.money(said.paid().owing(), path + "paid.owing");
    }
    if (!rules.errors.isEmpty()) {
      throw new InvalidField(rules.errors);
    }
  }

  private void lines(List<SaidSale.Line> lines, String path) {
    if (lines == null || lines.isEmpty() || lines.size() > SaidSale.LINES_MAX) {
      require(false, path, "Give 1 to " + SaidSale.LINES_MAX + " lines.");
      return;
    }
    for (int n = 0; n < lines.size(); n++) {
      SaidSale.Line line = lines.get(n);
      String field = path + "[" + n + "]";
      if (line == null) {
        require(false, field, "Give container and count.");
        continue;
      }
      require(
          line.container() != null && !line.container().isBlank(),
          field + ".container",
          "Give the code of a container, for example PT.");
      require(
          line.lot() == null || !line.lot().isBlank() && line.lot().length() <= CODE_MAX,
          field + ".lot",
          "Give the lot on the label in at most " + CODE_MAX + " characters, or leave it out.");
      require(
          line.count() != null && line.count() >= 1 && line.count() <= SaidSale.COUNT_MAX,
          field + ".count",
          "Give a whole number of jars from 1 to " + SaidSale.COUNT_MAX + ".");
      money(line.price(), field + ".price");
    }
  }

  private void money(Money money, String field) {
    if (money == null) {
      return;
    }
    if (!money.currency().equals(currency)) {
      throw new CurrencyMismatch(money.currency(), currency, field + ".currency");
    }
    require(
        money.signum() >= 0 && money.amount().compareTo(PRICE_MAX) <= 0,
        field + ".amount",
        "Give an amount from 0 to " + PRICE_MAX.toPlainString() + ".");
  }

  private void require(boolean met, String field, String mend) {
    if (!met) {
      errors.add(new FieldError(field, mend));
    }
  }
}
