package org.barreltally.cost;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.barreltally.cost.flow.FairCents;
import org.barreltally.cost.flow.Pool;
import org.barreltally.cost.flow.PoolKey;
import org.barreltally.ledger.Days;
import org.barreltally.pricing.Money;

/** What the stock is worth at cost on a day. */
@ApplicationScoped
public class StockValues {

  private final Reckoning reckoning;
  private final Days days;

  StockValues(Reckoning reckoning, Days days) {
    this.reckoning = reckoning;
    this.days = days;
  }

  /**
   * @param on null for today
   * @param method null for the one chosen for the year
   * @throws org.barreltally.ledger.InTheFuture if the day has not come
   */
  public StockValue on(LocalDate on, CostMethod method) {
    LocalDate day = on == null ? days.today() : days.happened(on, "on");
    Reckoning.Of of = reckoning.year(day.getYear(), method, day);
    List<StockValue.Row> rows = new ArrayList<>();
    of.walk()
        .end()
        .pools()
        .forEach(
            (key, pool) ->
                rows(of, key, pool, of.walk().end().standing().getOrDefault(key, Map.of()), rows));
    Map<String, Money> totals = new TreeMap<>();
    for (StockValue.Row row : rows) {
      totals.merge(row.where(), row.stands().cost(), Money::plus);
    }
    return new StockValue(
        day,
        of.method(),
        of.money(of.walk().end().value()),
        totals.entrySet().stream()
            .map(each -> new StockValue.Total(each.getKey(), each.getValue()))
            .toList(),
        rows,
        YearCost.NOTE);
  }

  /** A pool's value shared out over the places where its goods stand. */
  private static void rows(
      Reckoning.Of of,
      PoolKey key,
      Pool pool,
      Map<String, Long> standing,
      List<StockValue.Row> rows) {
    Map<String, Long> there = new TreeMap<>(standing);
    there.values().removeIf(amount -> amount == 0);
    if (there.isEmpty()) {
      return;
    }
    List<String> places = List.copyOf(there.keySet());
    List<BigDecimal> parts =
        FairCents.of(
            pool.value(), places.stream().map(p -> BigDecimal.valueOf(there.get(p))).toList());
    for (int n = 0; n < places.size(); n++) {
      String place = places.get(n);
      rows.add(
          new StockValue.Row(
              where(key, of.read().places().getOrDefault(place, "out")),
              place,
              key.lot(),
              key.container(),
              key.grade(),
              Amount.of(key.container(), there.get(place), of.money(parts.get(n)))));
    }
  }

  private static String where(PoolKey key, String kind) {
    if (key.container() == null) {
      return "barrels";
    }
    return switch (kind) {
      case "home" -> "own-shelves";
      case "show" -> "shows";
      case "shop" -> "consigned";
      default -> "elsewhere";
    };
  }
}
