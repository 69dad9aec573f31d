package org.barreltally.shows.settling;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.barreltally.pricing.Deal;
import org.barreltally.pricing.Money;
import org.barreltally.pricing.PriceLine;
import org.barreltally.pricing.PriceList;
import org.barreltally.sales.SalePrices;
import org.barreltally.sales.SizeReckoning;
import org.barreltally.sales.Stall;
import org.barreltally.sales.Takings;
import org.barreltally.sales.TakingsBook;
import org.barreltally.sales.drawer.CashUp;
import org.barreltally.sales.drawer.Clue;
import org.barreltally.shows.Booth;
import org.barreltally.shows.Drawers;
import org.barreltally.shows.Show;
import org.barreltally.shows.ShowRecords;

/** The money side of a show's table. */
@ApplicationScoped
class TableMoney {

  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  private final TakingsBook takings;
  private final SalePrices prices;
  private final Drawers drawers;
  private final ShowRecords records;

  TableMoney(TakingsBook takings, SalePrices prices, Drawers drawers, ShowRecords records) {
    this.takings = takings;
    this.prices = prices;
    this.drawers = drawers;
    this.records = records;
  }

  Takings takings(Show show, String currency) {
    return takings.of(show.place(), currency);
  }

  /** What was told with the pack-outs, else what is booked to be brought, else nothing. */
  Money cashFloat(Show show, String currency) {
    return records
        .cashFloat(show.id())
        .or(() -> Optional.ofNullable(show.booking().cashFloat()))
        .orElse(Money.none(currency));
  }

  Optional<Money> counted(Show show) {
    return drawers.counted(show.id());
  }

  CashUp cashUp(Show show, Stall stall, Takings taken, Money payouts, List<SizeReckoning> sizes) {
    String currency = taken.cash().currency();
    return CashUp.of(
        cashFloat(show, currency),
        taken.cash(),
        taken.change(),
        payouts,
        counted(show).orElse(null),
        clues(show, stall, sizes, currency));
  }

  /** What could put the drawer off: deals, prices, jars gone unrecorded, sales told as card. */
  private List<Clue> clues(Show show, Stall stall, List<SizeReckoning> sizes, String currency) {
    List<Clue> clues = new ArrayList<>();
    Optional<PriceList> list = prices.list(stall, show.starts(), currency);
    list.ifPresent(
        held -> {
          held.deals().forEach(deal -> savings(held, deal).forEach(clues::add));
          for (SizeReckoning size : sizes) {
            long gone = size.at(show.place()).unrecorded();
            priced(held, size.container())
                .filter(line -> gone > 0)
                .forEach(line -> clues.add(unrecorded(size, line, gone)));
          }
          held.lines()
              .forEach(
                  line ->
                      clues.add(
                          Clue.often(
                              "%s at %s".formatted(line.container(), line.price()), line.price())));
        });
    clues.addAll(takings.notInCash(show.place(), currency));
    return clues;
  }

  private static Stream<PriceLine> priced(PriceList list, String container) {
    return list.lines().stream().filter(line -> line.container().equals(container));
  }

  private static Clue unrecorded(SizeReckoning size, PriceLine line, long gone) {
    return Clue.once(
        "%d × %s at %s, which went without a record"
            .formatted(gone, size.container(), line.price()),
        line.price().times(BigDecimal.valueOf(gone)));
  }

  private static Stream<Clue> savings(PriceList list, Deal deal) {
    return priced(list, deal.container())
        .filter(
            line -> deal.grade() == null || deal.grade() == line.grade() || line.grade() == null)
        .map(line -> line.price().times(BigDecimal.valueOf(deal.count())).minus(deal.price()))
        .filter(saving -> saving.signum() > 0)
        .distinct()
        .map(
            saving ->
                Clue.often(
                    "the %s that the deal %d × %s takes off"
                        .formatted(saving, deal.count(), deal.container()),
                    saving));
  }

  /** Flat fee and percent of the takings. */
  static Money fee(Show show, Money takings) {
    Booth booth = show.booking().booth();
    Money none = Money.none(takings.currency());
    if (booth == null) {
      return none;
    }
    Money flat = booth.fee() == null ? none : booth.fee();
    Money share =
        booth.percentOfSales() == null
            ? none
            : Money.rounded(
                takings.amount().multiply(booth.percentOfSales()).divide(HUNDRED),
                takings.currency());
    return flat.plus(share);
  }
}
