package org.barreltally.shops;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Optional;
import org.barreltally.ledger.Item;
import org.barreltally.measure.ColorClass;
import org.barreltally.pricing.Audience;
import org.barreltally.pricing.CurrencyMismatch;
import org.barreltally.pricing.Money;
import org.barreltally.pricing.PriceList;
import org.barreltally.pricing.PriceLists;
import org.barreltally.settings.FarmSettings;

/** The prices that consigned jars are settled by. */
@ApplicationScoped
class ShopPrices {

  private final PriceLists lists;
  private final FarmSettings settings;

  ShopPrices(PriceLists lists, FarmSettings settings) {
    this.lists = lists;
    this.settings = settings;
  }

  /** Nothing, in the farm's currency. */
  Money none() {
    return Money.none(settings.now().said().currency());
  }

  /**
   * The price of one jar on a day: of the version of the terms' list that holds then, or of the
   * retail list that does.
   *
   * @throws NoShopPrice if no such list has a price for it
   */
  Money of(Item jars, Terms terms, LocalDate on, String field) {
    Optional<PriceList> list =
        terms.priceList() == null
            ? lists.current(Audience.RETAIL, on)
            : lists.holding(terms.priceList(), on);
    Money price =
        list.flatMap(l -> l.price(jars.container(), ColorClass.of(jars.grade())))
            .orElseThrow(() -> new NoShopPrice(jars.container(), jars.grade(), on, field));
    if (!price.currency().equals(none().currency())) {
      throw new CurrencyMismatch(price.currency(), none().currency(), field);
    }
    return price;
  }
}
