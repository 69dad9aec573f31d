package org.barreltally.pricing;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.ledger.Days;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;

/** The form of a price list as it is said; every field at fault is named at once. */
final class PriceListForm {

  static final int LINES_MAX = 1000;
  static final int DEALS_MAX = 200;
  private static final int NAME_MAX = 100;
  private static final int COUNT_MAX = 1000;
  private static final BigDecimal PRICE_MAX = BigDecimal.valueOf(1_000_000);

  private final Days days;
  private final List<FieldError> errors = new ArrayList<>();

  private PriceListForm(Days days) {
    this.days = days;
  }

  /**
   * @throws InvalidField naming every field that is missing, malformed or out of its range
   */
  static void check(EnterPriceList said, Days days) {
    PriceListForm form = new PriceListForm(days);
    form.name(said.name());
    form.require(said.audience() != null, "audience", "Give one of retail, show, wholesale, bulk.");
    form.day(said.validFrom(), "validFrom");
    if (said.validTo() != null) {
      form.day(said.validTo(), "validTo");
    }
    form.lines(said.lines());
    form.deals(said.deals());
    if (!form.errors.isEmpty()) {
      throw new InvalidField(form.errors);
    }
  }

  private void name(String name) {
    require(
        name != null
            && !name.isBlank()
            && name.length() <= NAME_MAX
            && name.codePoints().noneMatch(Character::isISOControl),
        "name",
        "Give a name of one line, at most " + NAME_MAX + " characters, for example Fair prices.");
  }

  private void day(LocalDate day, String field) {
    try {
      days.known(day, field);
    } catch (InvalidField malformed) {
      errors.addAll(malformed.errors());
    }
  }

  private void lines(List<EnterPriceList.Line> lines) {
    if (lines == null || lines.isEmpty() || lines.size() > LINES_MAX) {
      require(false, "lines", "Give 1 to " + LINES_MAX + " lines.");
      return;
    }
    for (int i = 0; i < lines.size(); i++) {
      String field = "lines[" + i + "]";
      EnterPriceList.Line line = lines.get(i);
      if (line == null) {
        require(false, field, "Give a container and its price.");
        continue;
      }
      container(line.container(), field);
      price(line.price(), field);
    }
  }

  private void deals(List<EnterPriceList.SaidDeal> deals) {
    if (deals == null) {
      return;
    }
    if (deals.size() > DEALS_MAX) {
      require(false, "deals", "Give at most " + DEALS_MAX + " deals.");
      return;
    }
    for (int i = 0; i < deals.size(); i++) {
      String field = "deals[" + i + "]";
      EnterPriceList.SaidDeal deal = deals.get(i);
      if (deal == null) {
        require(false, field, "Give a container, a count and a price.");
        continue;
      }
      container(deal.container(), field);
      price(deal.price(), field);
      require(
          deal.count() != null && deal.count() >= 2 && deal.count() <= COUNT_MAX,
          field + ".count",
          "Give how many jars go together, a whole number from 2 to " + COUNT_MAX + ".");
    }
  }

  private void container(String code, String field) {
    require(
        code != null && !code.isBlank(),
        field + ".container",
        "Give the code of a container, for example PT.");
  }

  private void price(Money price, String field) {
    if (price == null) {
      require(
          false,
          field + ".price",
          "Give the price, for example {\"amount\": 15.00, \"currency\": \"USD\"}.");
      return;
    }
    require(
        price.signum() >= 0 && price.amount().compareTo(PRICE_MAX) <= 0,
        field + ".price.amount",
        "Give an amount from 0 to " + PRICE_MAX.toPlainString() + ".");
  }

  private void require(boolean met, String field, String mend) {
    if (!met) {
      errors.add(new FieldError(field, mend));
    }
  }
}
