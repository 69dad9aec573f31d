package org.barreltally.cost;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import org.barreltally.cost.flow.FairCents;
import org.barreltally.cost.flow.Line;
import org.barreltally.cost.flow.Line.Flow;
import org.barreltally.cost.internal.TakingsRows;
import org.barreltally.cost.internal.TakingsRows.Order;
import org.barreltally.cost.internal.TakingsRows.Settled;
import org.barreltally.cost.internal.TakingsRows.Taken;
import org.barreltally.gifts.GiftBill;
import org.barreltally.gifts.GiftOrders;
import org.barreltally.pricing.Money;
import org.barreltally.shows.Show;
import org.barreltally.shows.Shows;
import org.barreltally.shows.settling.Settlement;
import org.barreltally.shows.settling.Settling;

/**
 * What was earned in a year: takings less what the goods cost and what was paid for selling them.
 */
@ApplicationScoped
public class Earnings {

  private static final String NOTE =
      "Takings are without tax. Goods are those that went to buyers, at the year's method; jars lost at shows and shops stand as goods-lost. "
          + YearCost.NOTE;
  private static final int SHOWS_MOST = 500;

  private final Reckoning reckoning;
  private final TakingsRows takings;
  private final GiftOrders gifts;
  private final Shows shows;
  private final Settling settling;

  Earnings(
      Reckoning reckoning, TakingsRows takings, GiftOrders gifts, Shows shows, Settling settling) {
    this.reckoning = reckoning;
    this.takings = takings;
    this.gifts = gifts;
    this.shows = shows;
    this.settling = settling;
  }

  /** What was earned in a year of the book. */
  public Margins of(int year, Margins.By by) {
    Reckoning.Of of = reckoning.year(year, null, null);
    return margins(
        of,
        by,
        switch (by) {
          case CONTAINER -> byContainer(of, billed(of));
          case SHOW -> byShow(of);
          case ORDER -> byOrder(of);
        });
  }

  /**
   * What was earned by container or show in a year of the book, as it was known at a time: gift
   * orders as they stood then, and shows as they were settled last by then, the others left out.
   *
   * @param by not by order
   */
  public Margins known(int year, Margins.By by, Instant asOf) {
    Reckoning.Of of = reckoning.year(year, null, null);
    return margins(
        of,
        by,
        switch (by) {
          case CONTAINER -> byContainer(of, billed(of, asOf));
          case SHOW -> byShow(of, asOf);
          case ORDER -> throw new IllegalArgumentException("orders are told as they stand now");
        });
  }

  private static Margins margins(Reckoning.Of of, Margins.By by, List<Margins.Row> rows) {
    int year = of.year();
    return new Margins(year, by, of.method(), rows, Margins.Totals.of(rows, of.currency()), NOTE);
  }

  private List<Margins.Row> byContainer(Reckoning.Of of, Map<UUID, Money> gifts) {
    Map<String, Earned> sums = new TreeMap<>();
    for (Line line : gone(of)) {
      if (Earned.isByBuyer(line)) {
        boolean gift = line.kind().startsWith("gift");
        String name = line.pool().container() == null ? "bulk" : line.pool().container();
        sums.computeIfAbsent(gift ? "gift-boxes" : name, n -> new Earned(of))
            .add(line, of.money(line.value()));
      }
    }
    shared(of)
        .forEach(
            (taken, part) -> {
              String name = taken.container() == null ? "bulk" : taken.container();
              Earned sum = sums.computeIfAbsent(name, n -> new Earned(of));
              sum.takings = sum.takings.plus(part);
            });
    for (Money goods : gifts.values()) {
      Earned sum = sums.computeIfAbsent("gift-boxes", n -> new Earned(of));
      sum.takings = sum.takings.plus(goods);
    }
    return sums.entrySet().stream()
        .map(
            each -> {
              Earned sum = each.getValue();
              String what =
                  Set.of("bulk", "gift-boxes").contains(each.getKey())
                      ? each.getKey()
                      : "container";
              Long count = what.equals("bulk") ? null : Long.valueOf(sum.count);
              return Margins.Row.of(
                  what, each.getKey(), null, count, sum.takings, sum.goods, List.of());
            })
        .toList();
  }

  /** Entries shared out over their lines, to the cent. */
  private Map<Taken, Money> shared(Reckoning.Of of) {
    Map<Taken, Money> shared = new IdentityHashMap<>();
    takings.taken(of.year(), of.currency()).stream()
        .collect(Collectors.groupingBy(taken -> taken.what() + taken.entry()))
        .values()
        .forEach(
            lines -> {
              BigDecimal whole = of.money(lines.get(0).whole()).amount();
              List<BigDecimal> parts =
                  FairCents.of(whole, lines.stream().map(Taken::weight).toList());
              for (int n = 0; n < lines.size(); n++) {
                shared.put(lines.get(n), of.money(parts.get(n)));
              }
            });
    return shared;
  }

  private static List<Line> gone(Reckoning.Of of) {
    return of.walk().lines().stream().filter(line -> line.flow() == Flow.GONE).toList();
  }

  /** Goods on the bills of gift orders of which the first jars went in the year. */
  private Map<UUID, Money> billed(Reckoning.Of of) {
    Map<UUID, Money> goods = new TreeMap<>();
    bills(of).forEach((id, bill) -> goods.put(id, bill.goods()));
    return goods;
  }

  /** The same as they were at a time. */
  private Map<UUID, Money> billed(Reckoning.Of of, Instant asOf) {
    Map<UUID, BigDecimal> known = takings.billed(of.currency(), asOf);
    Map<UUID, Money> goods = new TreeMap<>();
    for (UUID id : firstGone(of)) {
      if (known.containsKey(id)) {
        goods.put(id, of.money(known.get(id)));
      }
    }
    return goods;
  }

  private Map<UUID, GiftBill> bills(Reckoning.Of of) {
    Map<UUID, GiftBill> bills = new TreeMap<>();
    for (UUID id : firstGone(of)) {
      GiftBill bill = GiftBill.of(gifts.at(id));
      if (bill.goods().currency().equals(of.currency())) {
        bills.put(id, bill);
      }
    }
    return bills;
  }

  /** Gift orders of which the first jars went in the year. */
  private List<UUID> firstGone(Reckoning.Of of) {
    Map<Integer, Map<UUID, Order>> orders = new HashMap<>();
    Map<String, Integer> first = new TreeMap<>();
    of.walk().end().lines().stream()
        .filter(line -> line.flow() == Flow.GONE && line.kind().startsWith("gift"))
        .forEach(
            line -> {
              Order order =
                  orders.computeIfAbsent(line.year(), takings::orders).get(line.movement());
              if (order != null && "gift".equals(order.what())) {
                first.merge(order.name(), line.year(), Math::min);
              }
            });
    return first.entrySet().stream()
        .filter(each -> each.getValue() == of.year())
        .map(each -> UUID.fromString(each.getKey()))
        .toList();
  }

  private List<Margins.Row> byShow(Reckoning.Of of) {
    Map<UUID, BigDecimal> spent = takings.ofShows(of.currency(), null);
    Map<String, Earned> sums = byTable(of);
    List<Margins.Row> rows = new ArrayList<>();
    for (Show show : shows.list(new Shows.Filter(of.year(), null), null, SHOWS_MOST)) {
      Settlement told = settling.read(show.id());
      Settled settled =
          new Settled(
              told.takings().minus(told.takenIn().tax()), told.fee(), told.travel(), told.helper());
      row(of, show, settled, spent, sums).ifPresent(rows::add);
    }
    return rows;
  }

  private List<Margins.Row> byShow(Reckoning.Of of, Instant asOf) {
    Map<UUID, Settled> settled = takings.settled(of.currency(), asOf);
    Map<UUID, BigDecimal> spent = takings.ofShows(of.currency(), of.year());
    Map<String, Earned> sums = byTable(of);
    List<Margins.Row> rows = new ArrayList<>();
    for (Show show : shows.list(new Shows.Filter(of.year(), null), null, SHOWS_MOST)) {
      if (settled.containsKey(show.id())) {
        row(of, show, settled.get(show.id()), spent, sums).ifPresent(rows::add);
      }
    }
    return rows;
  }

  private static Optional<Margins.Row> row(
      Reckoning.Of of,
      Show show,
      Settled told,
      Map<UUID, BigDecimal> spent,
      Map<String, Earned> sums) {
    Money other = of.money(spent.getOrDefault(show.id(), BigDecimal.ZERO));
    return sums.getOrDefault(show.place(), new Earned(of)).ofShow(show, told, other);
  }

  /** What went from the tables of shows. */
  private static Map<String, Earned> byTable(Reckoning.Of of) {
    Map<String, Earned> sums = new TreeMap<>();
    gone(of).stream()
        .filter(line -> "show".equals(of.read().places().get(line.place())))
        .forEach(
            line ->
                sums.computeIfAbsent(line.place(), place -> new Earned(of))
                    .add(line, of.money(line.value())));
    return sums;
  }

  private List<Margins.Row> byOrder(Reckoning.Of of) {
    Map<UUID, Order> orders = takings.orders(of.year());
    Map<String, Order> named = new TreeMap<>();
    Map<String, Earned> sums = new TreeMap<>();
    for (Line line : gone(of)) {
      Order order = orders.get(line.movement());
      if (order != null && !"table".equals(order.channel())) {
        named.put(order.what() + " " + order.name(), order);
        sums.computeIfAbsent(order.what() + " " + order.name(), n -> new Earned(of))
            .add(line, of.money(line.value()));
      }
    }
    shared(of)
        .forEach(
            (taken, part) -> {
              if (!"table".equals(taken.channel())) {
                String what = "refund".equals(taken.what()) ? "sale" : taken.what();
                String key = what + " " + taken.order();
                named.putIfAbsent(key, new Order(what, taken.order(), taken.channel(), taken.on()));
                Earned sum = sums.computeIfAbsent(key, n -> new Earned(of));
                sum.takings = sum.takings.plus(part);
              }
            });
    Map<String, GiftBill> bills = new HashMap<>();
    bills(of)
        .forEach(
            (id, bill) -> {
              String key = "gift " + id;
              bills.put(key, bill);
              named.putIfAbsent(key, new Order("gift", id.toString(), null, null));
              Earned sum = sums.computeIfAbsent(key, n -> new Earned(of));
              sum.takings = sum.takings.plus(bill.goods());
            });
    return sums.entrySet().stream()
        .map(each -> order(each.getValue(), named.get(each.getKey()), bills.get(each.getKey())))
        .toList();
  }

  private static Margins.Row order(Earned sum, Order order, GiftBill bill) {
    List<Margins.Charge> charges = new ArrayList<>(sum.charges());
    if (bill != null) {
      Earned.charge(charges, "postage", bill.ownCost());
    }
    Long count = "bulk".equals(order.what()) ? null : Long.valueOf(sum.count);
    return Margins.Row.of(
        order.what(), order.name(), order.on(), count, sum.takings, sum.goods, charges);
  }
}
