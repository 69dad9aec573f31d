package org.barreltally.cost;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.barreltally.cost.YearCost.Gone;
import org.barreltally.cost.flow.Contribution;
import org.barreltally.cost.flow.Line;
import org.barreltally.cost.flow.Line.Flow;
import org.barreltally.cost.flow.PoolKey;
import org.barreltally.cost.flow.Spent;
import org.barreltally.cost.flow.YearWalk;
import org.barreltally.pricing.Money;

/** What gone goods cost in a year, and what was left. */
@ApplicationScoped
public class CostOfGoods {

  private static final Set<Contribution.Of> CONTAINERS =
      EnumSet.of(Contribution.Of.CONTAINER, Contribution.Of.SUPPLY);

  private final Reckoning reckoning;

  CostOfGoods(Reckoning reckoning) {
    this.reckoning = reckoning;
  }

  /**
   * @param method null for the one chosen for the year
   */
  public YearCost of(int year, CostMethod method) {
    Reckoning.Of of = reckoning.year(year, method, null);
    Map<PoolKey, List<Line>> lines = new TreeMap<>();
    of.walk().lines().forEach(l -> lines.computeIfAbsent(l.pool(), k -> new ArrayList<>()).add(l));
    Set<PoolKey> keys = new TreeSet<>(of.walk().closing().keySet());
    List<YearCost.Row> rows =
        keys.stream()
            .map(key -> row(of, key, lines.getOrDefault(key, List.of())))
            .filter(CostOfGoods::saysSomething)
            .toList();
    return new YearCost(
        year,
        of.method(),
        totals(of, method == null ? reckoning.closingBefore(of) : null),
        rows,
        of.walk().spread().late().stream()
            .filter(late -> late.year() == year)
            .map(late -> told(of, late.cost(), late.value()))
            .toList(),
        of.walk().spread().waiting().stream().map(cost -> told(of, cost, cost.amount())).toList(),
        YearCost.NOTE);
  }

  private static YearCost.Told told(Reckoning.Of of, Spent cost, BigDecimal amount) {
    return new YearCost.Told(cost.id(), cost.of().code(), cost.name(), of.money(amount));
  }

  private static boolean saysSomething(YearCost.Row row) {
    return row.opening() != null
        || row.boiled() != null
        || row.bought() != null
        || row.openedBook() != null
        || row.made() != null
        || row.used() != null
        || !row.gone().isEmpty()
        || row.closing() != null;
  }

  private static YearCost.Row row(Reckoning.Of of, PoolKey key, List<Line> lines) {
    return new YearCost.Row(
        key.lot(),
        key.container(),
        key.grade(),
        stood(of, key, of.walk().opening().get(key)),
        flow(of, key, lines, Flow.BOILED),
        flow(of, key, lines, Flow.BOUGHT),
        flow(of, key, lines, Flow.OPENED),
        flow(of, key, lines, Flow.MADE),
        flow(of, key, lines, Flow.USED),
        gone(of, key, lines),
        stood(of, key, of.walk().closing().get(key)));
  }

  private static Amount stood(Reckoning.Of of, PoolKey key, YearWalk.Stood stood) {
    return stood == null || stood.amount() == 0 && stood.value().signum() == 0
        ? null
        : Amount.of(key.container(), stood.amount(), of.money(stood.value()));
  }

  private static Amount flow(Reckoning.Of of, PoolKey key, List<Line> lines, Flow flow) {
    List<Line> its = lines.stream().filter(line -> line.flow() == flow).toList();
    return its.isEmpty() ? null : Amount.of(key.container(), amount(its), of.money(value(its)));
  }

  private static List<Gone> gone(Reckoning.Of of, PoolKey key, List<Line> lines) {
    List<Gone> gone = new ArrayList<>();
    byAccount(lines)
        .forEach(
            (account, its) -> {
              if (amount(its) != 0 || value(its).signum() != 0) {
                Money cost = of.money(value(its));
                gone.add(new Gone(account, Amount.of(key.container(), amount(its), cost), null));
              }
            });
    return gone;
  }

  private static Map<String, List<Line>> byAccount(List<Line> lines) {
    Map<String, List<Line>> accounts = new TreeMap<>();
    lines.stream()
        .filter(line -> line.flow() == Flow.GONE)
        .forEach(
            line -> accounts.computeIfAbsent(line.account(), a -> new ArrayList<>()).add(line));
    return accounts;
  }

  private YearCost.Totals totals(Reckoning.Of of, BigDecimal closingBefore) {
    List<Line> lines = of.walk().lines();
    BigDecimal opening =
        of.walk().opening().values().stream()
            .map(YearWalk.Stood::value)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    BigDecimal late =
        of.walk().spread().late().stream()
            .filter(each -> each.year() == of.year())
            .map(each -> each.value())
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    List<Gone> goneTo = new ArrayList<>();
    byAccount(lines)
        .forEach((account, its) -> goneTo.add(new Gone(account, null, of.money(value(its)))));
    if (late.signum() != 0) {
      goneTo.add(new Gone("late-costs", null, of.money(late)));
    }
    Money gone = goneTo.stream().map(Gone::cost).reduce(Money.none(of.currency()), Money::plus);
    return new YearCost.Totals(
        closingBefore == null ? null : of.money(opening.subtract(closingBefore)),
        of.money(opening),
        total(of, Flow.BOILED),
        total(of, Flow.BOUGHT),
        total(of, Flow.OPENED),
        added(of, each -> each == Contribution.Of.RUN),
        added(of, CONTAINERS::contains),
        of.money(late),
        gone,
        goneTo,
        of.money(of.walk().end().value()));
  }

  private static Money total(Reckoning.Of of, Flow flow) {
    return of.money(value(of.walk().lines().stream().filter(line -> line.flow() == flow).toList()));
  }

  private static Money added(Reckoning.Of of, Predicate<Contribution.Of> which) {
    return of.money(
        of.walk().makings().stream()
            .flatMap(making -> making.outputs().stream())
            .flatMap(output -> output.added().stream())
            .filter(added -> which.test(added.of()))
            .map(Contribution::value)
            .reduce(BigDecimal.ZERO, BigDecimal::add));
  }

  private static long amount(List<Line> lines) {
    return lines.stream().mapToLong(Line::amount).sum();
  }

  private static BigDecimal value(List<Line> lines) {
    return lines.stream().map(Line::value).reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}
