package org.barreltally.shops;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.pricing.CurrencyMismatch;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;
import org.barreltally.shops.internal.OtherEntries;
import org.barreltally.shops.internal.ShelfLog;
import org.barreltally.shops.internal.ShopRows;

/** What shops owe, what they paid, and the statement of both. */
@ApplicationScoped
public class Accounts {

  private final Shops shops;
  private final ShopRows rows;
  private final ShopPrices prices;
  private final ShelfLog log;
  private final OtherEntries others;
  private final Days days;
  private final Ids ids;

  Accounts(
      Shops shops,
      ShopRows rows,
      ShopPrices prices,
      ShelfLog log,
      OtherEntries others,
      Days days,
      Ids ids) {
    this.shops = shops;
    this.rows = rows;
    this.prices = prices;
    this.log = log;
    this.others = others;
    this.days = days;
    this.ids = ids;
  }

  /**
   * Books money that a shop paid.
   *
   * @throws UnknownShop if there is none of that code
   * @throws InvalidField if the amount is nothing
   * @throws CurrencyMismatch if it is of another currency than the farm's
   */
  @Transactional
  public Paid pay(String code, PayShop said) {
    Shop shop = shops.at(code);
    if (said.amount().signum() == 0) {
      throw new InvalidField("amount", "Give an amount; below zero where you paid the shop back.");
    }
    if (!said.amount().currency().equals(prices.none().currency())) {
      throw new CurrencyMismatch(said.amount().currency(), prices.none().currency(), "amount");
    }
    LocalDate on = said.on() == null ? days.today() : days.happened(said.on(), "on");
    Paid paid = new Paid(ids.next(), shop.code(), on, said.amount(), said.note());
    log.keep(paid);
    return paid;
  }

  /**
   * The statement of a shop.
   *
   * @param from the first day; null for the beginning
   * @param to the last day; null for today
   * @throws UnknownShop if there is none of that code
   * @throws InvalidField if the days are the wrong way round
   */
  @Transactional
  public Statement statement(String code, LocalDate from, LocalDate to) {
    Shop shop = shops.at(code);
    LocalDate last = to == null ? days.today() : to;
    LocalDate first = from == null ? LocalDate.of(1900, 1, 1) : from;
    if (last.isBefore(first)) {
      throw new InvalidField("to", "The last day lies before the first. Turn them round.");
    }
    List<Delivery> deliveries = log.deliveries(code, last);
    List<ShelfCount> counts = log.counts(code, last);
    List<Paid> payments = log.payments(code, last);
    LocalDate shownFrom = from != null ? from : earliest(deliveries, counts, payments, shop, last);
    Money dueBefore =
        sum(counts, c -> c.on().isBefore(first), ShelfCount::due)
            .minus(sum(payments, p -> p.on().isBefore(first), Paid::amount));
    Money due = sum(counts, c -> !c.on().isBefore(first), ShelfCount::due);
    Money paid = sum(payments, p -> !p.on().isBefore(first), Paid::amount);
    return new Statement(
        shop.code(),
        shop.name(),
        shownFrom,
        last,
        rows.terms(code, last),
        ShelfItems.between(deliveries, counts, others.upTo(shop.place(), last), first),
        deliveries.stream().filter(d -> !d.on().isBefore(first)).toList(),
        counts.stream().filter(c -> !c.on().isBefore(first)).toList(),
        payments.stream().filter(p -> !p.on().isBefore(first)).toList(),
        dueBefore,
        due,
        paid,
        dueBefore.plus(due).minus(paid));
  }

  private LocalDate earliest(
      List<Delivery> deliveries,
      List<ShelfCount> counts,
      List<Paid> payments,
      Shop shop,
      LocalDate last) {
    LocalDate day = days.dateOf(shop.since());
    day = deliveries.isEmpty() ? day : earlier(day, deliveries.get(0).on());
    day = counts.isEmpty() ? day : earlier(day, counts.get(0).on());
    day = payments.isEmpty() ? day : earlier(day, payments.get(0).on());
    return earlier(day, last);
  }

  private static LocalDate earlier(LocalDate one, LocalDate other) {
    return one.isBefore(other) ? one : other;
  }

  private <T> Money sum(List<T> all, Predicate<T> counted, Function<T, Money> amount) {
    return all.stream().filter(counted).map(amount).reduce(prices.none(), Money::plus);
  }
}
