package org.barreltally.sales;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barreltally.pricing.BasketLine;
import org.barreltally.pricing.Charged;
import org.barreltally.pricing.Deals;
import org.barreltally.pricing.Money;
import org.barreltally.pricing.PriceList;
import org.barreltally.pricing.ProductClass;
import org.barreltally.pricing.Taxes;

/** Prices sales by the list that lay at the stall on the day of the sale. */
@ApplicationScoped
class Prices {

  private final SalePrices lists;
  private final Taxes taxes;

  Prices(SalePrices lists, Taxes taxes) {
    this.lists = lists;
    this.taxes = taxes;
  }

  /** Remembers the lists of the days of one batch. */
  final class Day {
    private final Stall stall;
    private final String currency;
    private final Map<LocalDate, Optional<PriceList>> known = new HashMap<>();

    private Day(Stall stall, String currency) {
      this.stall = stall;
      this.currency = currency;
    }

    Price of(SaidSale said, List<BasketLine> lines, LocalDate day) {
      PriceList list = known.computeIfAbsent(day, d -> lists.list(stall, d, currency)).orElse(null);
      Money[] each = new Money[lines.size()];
      Money[] amounts = new Money[lines.size()];
      Money saved = Money.none(currency);
      List<Integer> listed = new ArrayList<>();
      for (int n = 0; n < lines.size(); n++) {
        BasketLine line = lines.get(n);
        if (line.each() != null) {
          each[n] = line.each();
          amounts[n] = line.each().times(BigDecimal.valueOf(line.count()));
        } else if (list != null && list.price(line.container(), line.grade()).isPresent()) {
          listed.add(n);
        }
      }
      if (!listed.isEmpty()) {
        List<BasketLine> basket = listed.stream().map(lines::get).toList();
        Charged charged = said.isDeal() ? Deals.of(list).apply(basket) : list.charge(basket);
        for (int n = 0; n < listed.size(); n++) {
          each[listed.get(n)] = charged.lines().get(n).each();
          amounts[listed.get(n)] = charged.lines().get(n).amount();
        }
        saved = charged.saved();
      }
      return taxed(list, lines, Arrays.asList(each), Arrays.asList(amounts), saved, day);
    }

    private Price taxed(
        PriceList list,
        List<BasketLine> lines,
        List<Money> each,
        List<Money> amounts,
        Money saved,
        LocalDate day) {
      boolean included = list == null || list.taxIncluded();
      Money tax = Money.none(currency);
      Money total = Money.none(currency);
      for (int n = 0; n < lines.size(); n++) {
        if (amounts.get(n) == null) {
          total = null;
          continue;
        }
        BasketLine line = lines.get(n);
        ProductClass kind =
            list == null ? ProductClass.FOOD : list.productClass(line.container(), line.grade());
        var taxed = taxes.on(amounts.get(n), included, kind, stall.taxPlace(), day);
        tax = tax.plus(taxed.tax());
        total = total == null ? null : total.plus(taxed.gross());
      }
      return new Price(list == null ? null : list.id(), each, amounts, saved, tax, total);
    }
  }

  Day at(Stall stall, String currency) {
    return new Day(stall, currency);
  }
}
