package org.barreltally.shows.settling;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import org.barreltally.pricing.CurrencyMismatch;
import org.barreltally.pricing.Money;
import org.barreltally.sales.Channel;
import org.barreltally.sales.CountNeeded;
import org.barreltally.sales.CountsNeeded;
import org.barreltally.sales.SizeReckoning;
import org.barreltally.sales.Stall;
import org.barreltally.sales.TableReckoning;
import org.barreltally.sales.Takings;
import org.barreltally.sales.bylot.Bounds;
import org.barreltally.sales.drawer.CashUp;
import org.barreltally.settings.FarmSettings;
import org.barreltally.shows.Booking;
import org.barreltally.shows.Payments;
import org.barreltally.shows.Show;
import org.barreltally.shows.ShowState;
import org.barreltally.shows.Shows;
import org.barreltally.shows.internal.SettlementLog;

/** Reckons how a show stands: units by the ledger, money by its sales, each for itself. */
@ApplicationScoped
class ShowReckoning {

  private static final String NO_COST =
      "No cost is known for the syrup of these lots, so profit is before syrup.";

  private final Shows shows;
  private final TableReckoning tables;
  private final TableMoney money;
  private final CountsNeeded counts;
  private final Payments payments;
  private final FarmSettings settings;
  private final SettlementLog log;

  ShowReckoning(
      Shows shows,
      TableReckoning tables,
      TableMoney money,
      CountsNeeded counts,
      Payments payments,
      FarmSettings settings,
      SettlementLog log) {
    this.shows = shows;
    this.tables = tables;
    this.money = money;
    this.counts = counts;
    this.payments = payments;
    this.settings = settings;
    this.log = log;
  }

  /** The stall that a show is to sales. */
  static Stall stall(Show show) {
    return new Stall(show.place(), Channel.TABLE, show.booking().priceList(), show.town());
  }

  /** The show and those it exchanged jars with, by place: whether each was counted. */
  @Transactional
  Map<String, Boolean> counted(Show show) {
    SortedMap<String, Boolean> counted = new TreeMap<>();
    for (String place : tables.exchanging(show.place())) {
      counted.put(place, shows.atPlace(place).map(this::isCounted).orElse(true));
    }
    return counted;
  }

  /** Whether it is over and its jars were counted home: closing it alone counts nothing. */
  private boolean isCounted(Show show) {
    boolean over =
        show.state() == ShowState.CLOSED
            || show.state() == ShowState.SETTLED
            || show.state() == ShowState.CALLED_OFF;
    return over && log.wasCounted(show.id());
  }

  @Transactional
  Settlement of(Show show, SettleShow said) {
    String currency = settings.now().said().currency();
    Booking booking = show.booking();
    boolean calledOff = show.state() == ShowState.CALLED_OFF;
    Map<String, Boolean> counted = counted(show);
    List<SizeReckoning> sizes = List.copyOf(tables.of(counted).values());
    Takings taken = money.takings(show, currency);
    Money payouts = or(said.payouts(), null, currency, "payouts");
    CashUp cash = money.cashUp(show, stall(show), taken, payouts, sizes);
    Money paid = payments.paid(show.id());
    Money fee = calledOff ? paid : TableMoney.fee(show, taken.total());
    Money travel = or(said.travel(), calledOff ? null : booking.travelCost(), currency, "travel");
    Money helper = or(said.helper(), calledOff ? null : booking.helperPay(), currency, "helper");
    BigDecimal hours = said.hours() != null ? said.hours() : booking.hoursOpen();
    List<Settlement.Sold> sold = sold(show, sizes);
    return new Settlement(
        show.id(),
        show.state(),
        sold,
        soldByLot(show, sizes),
        taken.total(),
        new Settlement.TakenIn(
            taken.cash(), taken.change(), taken.card(), taken.owing(), taken.unsaid(), taken.tax()),
        money.cashFloat(show, currency),
        cash.due(),
        money.counted(show).orElse(null),
        cash.overShort(),
        cash.hints(),
        fee,
        paid,
        fee.minus(paid),
        travel,
        helper,
        null,
        NO_COST,
        taken.total().minus(fee).minus(travel).minus(helper),
        hours,
        perHour(sold, hours),
        waitsFor(show, counted),
        counts.list(show.place()),
        toLookAt(show, counted.get(show.place()), sizes, taken, counts.list(show.place())),
        null);
  }

  private static List<Settlement.Sold> sold(Show show, List<SizeReckoning> sizes) {
    List<Settlement.Sold> sold = new ArrayList<>();
    for (SizeReckoning size : sizes) {
      SizeReckoning.Total total = size.at(show.place());
      boolean stood = size.byLot().sold().containsKey(show.place());
      if (stood || total.sold() != 0) {
        sold.add(
            new Settlement.Sold(
                size.container(),
                total.sold(),
                total.recorded(),
                total.unrecorded(),
                total.beyond()));
      }
    }
    return sold;
  }

  private static List<Settlement.SoldLot> soldByLot(Show show, List<SizeReckoning> sizes) {
    List<Settlement.SoldLot> lots = new ArrayList<>();
    for (SizeReckoning size : sizes) {
      Map<String, Bounds> here = size.byLot().sold().getOrDefault(show.place(), Map.of());
      here.forEach(
          (lot, bounds) -> {
            if (bounds.most() > 0) {
              lots.add(
                  new Settlement.SoldLot(size.container(), lot, bounds.least(), bounds.most()));
            }
          });
      long beyond = size.at(show.place()).beyond();
      if (beyond > 0) {
        lots.add(new Settlement.SoldLot(size.container(), null, beyond, beyond));
      }
    }
    return lots;
  }

  private List<UUID> waitsFor(Show show, Map<String, Boolean> counted) {
    return counted.entrySet().stream()
        .filter(other -> !other.getValue() && !other.getKey().equals(show.place()))
        .flatMap(other -> shows.atPlace(other.getKey()).stream())
        .map(Show::id)
        .toList();
  }

  private static List<String> toLookAt(
      Show show,
      boolean counted,
      List<SizeReckoning> sizes,
      Takings taken,
      List<CountNeeded> needed) {
    List<String> found = new ArrayList<>();
    if (!counted && sizes.stream().anyMatch(size -> size.totals().containsKey(show.place()))) {
      found.add("Its jars were not counted home yet; sold is what was recorded.");
    }
    for (SizeReckoning size : sizes) {
      SizeReckoning.Total total = size.at(show.place());
      if (total.unrecorded() > 0) {
        found.add(
            "%d × %s are gone by the count without a sale: sold unrecorded, given or lost. They count as sold."
                .formatted(total.unrecorded(), size.container()));
      }
      if (total.beyond() > 0) {
        found.add(
            "%d × %s were sold beyond what came to the table by the book. Look for a pack-out that was not entered."
                .formatted(total.beyond(), size.container()));
      }
      size.byLot().contradictions().stream()
          .filter(c -> c.place().equals(show.place()))
          .forEach(
              c ->
                  found.add(
                      "%d × %s of lot %s left the table beyond what came there. Look for a label that was misread; until then the lots are bounds."
                          .formatted(c.pieces(), size.container(), c.lot())));
    }
    needed.forEach(need -> found.add(need.why()));
    if (taken.notAddingUp() > 0) {
      found.add(
          "%d sales whose payment does not add up, or is not known. They are listed with the sales."
              .formatted(taken.notAddingUp()));
    }
    return found.stream().distinct().toList();
  }

  private static BigDecimal perHour(List<Settlement.Sold> sold, BigDecimal hours) {
    if (hours == null || hours.signum() <= 0) {
      return null;
    }
    long jars = sold.stream().mapToLong(Settlement.Sold::count).sum();
    return BigDecimal.valueOf(jars).divide(hours, 2, RoundingMode.HALF_UP);
  }

  private static Money or(Money said, Money booked, String currency, String field) {
    Money money = said != null ? said : booked;
    if (money == null) {
      return Money.none(currency);
    }
    if (!money.currency().equals(currency)) {
      throw new CurrencyMismatch(money.currency(), currency, field);
    }
    return money;
  }
}
