package org.barreltally.sales;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Optional;
import org.barreltally.pricing.PriceList;
import org.barreltally.pricing.PriceLists;

/** Which price list lies at a stall. */
@ApplicationScoped
public class SalePrices {

  private final PriceLists lists;

  SalePrices(PriceLists lists) {
    this.lists = lists;
  }

  /**
   * The list that holds at a stall on a day: its own, else the channel's. None if it is in another
   * currency.
   */
  @Transactional
  public Optional<PriceList> list(Stall stall, LocalDate day, String currency) {
    Optional<PriceList> own =
        stall.priceList() == null ? Optional.empty() : lists.holding(stall.priceList(), day);
    return own.or(() -> lists.current(stall.channel().audience(), day))
        .filter(list -> list.currency().equals(currency));
  }
}
