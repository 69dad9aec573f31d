package org.barreltally.shares;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Optional;
import org.barreltally.ledger.Item;
import org.barreltally.measure.ColorClass;
import org.barreltally.pricing.Audience;
import org.barreltally.pricing.Money;
import org.barreltally.pricing.PriceList;
import org.barreltally.pricing.PriceLists;
import org.barreltally.sugarbush.LeaseTerms;

/** What jars cost others on a day: what they count for by list value, and what to value rent by. */
@ApplicationScoped
class ListPrices {

  private final PriceLists lists;

  ListPrices(PriceLists lists) {
    this.lists = lists;
  }

  /** By the lease's list as it holds on the day, else by the retail list; in the lease's money. */
  Optional<Money> of(Item jars, LeaseTerms terms, LocalDate on) {
    Optional<PriceList> list =
        terms.priceList() == null
            ? lists.current(Audience.RETAIL, on)
            : lists.holding(terms.priceList(), on);
    return list.flatMap(l -> l.price(jars.container(), ColorClass.of(jars.grade())))
        .filter(price -> price.currency().equals(terms.ratePerTap().currency()));
  }
}
