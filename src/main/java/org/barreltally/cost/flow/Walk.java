package org.barreltally.cost.flow;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import org.barreltally.cost.CostMethod;
import org.barreltally.cost.flow.Happening.At;
import org.barreltally.cost.flow.Happening.Moved;
import org.barreltally.cost.flow.Line.Flow;

/**
 * Walks through the book and carries cost along with the goods, each movement once, in the order in
 * which things happened. A lot is made before it is used, so every lot's cost is known when another
 * is made of it, through however many blends and heels.
 */
public final class Walk {

  private static final Set<String> SOURCES = Set.of("boiled", "bought", "opening");

  private final CostMethod method;
  private final int scale;
  private final Spread spread;
  private final Map<PoolKey, Pool> pools = new TreeMap<>();
  private final Map<PoolKey, Map<String, Long>> standing = new TreeMap<>();
  private final List<Line> lines = new ArrayList<>();
  private final List<Making> makings = new ArrayList<>();

  /**
   * @param scale decimals of the currency
   */
  public Walk(CostMethod method, int scale, Spread spread) {
    this.method = method;
    this.scale = scale;
    this.spread = spread;
  }

  static boolean isSource(String place) {
    return SOURCES.contains(place);
  }

  public List<Line> lines() {
    return lines;
  }

  public List<Making> makings() {
    return makings;
  }

  public Map<PoolKey, Pool> pools() {
    return pools;
  }

  /** What stands of each pool, by own place. */
  public Map<PoolKey, Map<String, Long>> standing() {
    return standing;
  }

  /** What all that stands cost. */
  public BigDecimal value() {
    return pools.values().stream().map(Pool::value).reduce(none(), BigDecimal::add);
  }

  /** Takes one movement. */
  public void take(Happening happening) {
    Map<UUID, OfItem> items = new LinkedHashMap<>();
    for (Moved moved : happening.moved()) {
      items.computeIfAbsent(moved.goods().item(), id -> new OfItem(moved.goods())).add(moved);
      if (moved.at() == At.OWN) {
        standing
            .computeIfAbsent(key(moved.goods()), key -> new TreeMap<>())
            .merge(moved.place(), moved.amount(), Long::sum);
      }
    }
    if (items.values().stream().anyMatch(OfItem::isMade)) {
      make(happening, List.copyOf(items.values()));
      return;
    }
    // what comes goes first, so that it can go on in the same movement
    List<OfItem.Step> steps =
        items.values().stream()
            .flatMap(item -> item.steps("settlement".equals(happening.kind())).stream())
            .toList();
    steps.stream().filter(step -> step.amount() < 0).forEach(step -> comes(happening, step));
    steps.stream().filter(step -> step.amount() > 0).forEach(step -> goes(happening, step));
  }

  private void comes(Happening happening, OfItem.Step step) {
    long amount = -step.amount();
    if (!isSource(step.account()) || happening.takesBack()) {
      PoolKey key = key(step.goods());
      Pool.CameBack back = pool(key).back(amount, step.account(), () -> otherwise(key));
      line(happening, key, Flow.GONE, step, -amount, back.value().negate());
      trueUp(happening, key, back.truedUp());
      return;
    }
    List<Contribution> added = spread.to(happening.id(), step.goods().item());
    BigDecimal value = sum(added);
    Flow flow =
        switch (step.account()) {
          case "boiled" -> Flow.BOILED;
          case "bought" -> Flow.BOUGHT;
          default -> Flow.OPENED;
        };
    in(happening, step, flow, amount, value);
    makings.add(
        new Making(
            happening.id(),
            happening.kind(),
            happening.year(),
            happening.day(),
            List.of(),
            List.of(new Making.Output(step.goods(), amount, none(), added, value))));
  }

  private void goes(Happening happening, OfItem.Step step) {
    PoolKey key = key(step.goods());
    BigDecimal cost = pool(key).out(step.amount(), step.account(), () -> otherwise(key));
    line(happening, key, Flow.GONE, step, step.amount(), cost);
  }

  /** A run, a top-up, or one taken back: the cost of what went in falls to the good that came. */
  private void make(Happening happening, List<OfItem> items) {
    List<OfItem> used = items.stream().filter(item -> item.own() < 0).toList();
    List<OfItem> came = items.stream().filter(item -> item.own() > 0).toList();
    List<Making.Input> inputs = new ArrayList<>();
    for (OfItem item : used) {
      PoolKey key = key(item.goods());
      String account = came.isEmpty() ? "lost-in-making" : "making";
      BigDecimal cost = pool(key).out(-item.own(), account, () -> otherwise(key));
      OfItem.Step step = new OfItem.Step(item.goods(), account, item.place(), -item.own());
      line(happening, key, came.isEmpty() ? Flow.GONE : Flow.USED, step, -item.own(), cost);
      inputs.add(new Making.Input(item.goods(), -item.own(), cost));
    }
    if (came.isEmpty()) {
      return;
    }
    BigDecimal carried = inputs.stream().map(Making.Input::value).reduce(none(), BigDecimal::add);
    List<BigDecimal> parts =
        FairCents.of(carried, came.stream().map(item -> item.goods().grams(item.own())).toList());
    List<Making.Output> outputs = new ArrayList<>();
    for (int n = 0; n < came.size(); n++) {
      OfItem item = came.get(n);
      List<Contribution> added = spread.to(happening.id(), item.goods().item());
      BigDecimal value = parts.get(n).add(sum(added));
      OfItem.Step step = new OfItem.Step(item.goods(), null, item.place(), item.own());
      in(happening, step, Flow.MADE, item.own(), value);
      outputs.add(new Making.Output(item.goods(), item.own(), parts.get(n), added, value));
    }
    makings.add(
        new Making(
            happening.id(), happening.kind(), happening.year(), happening.day(), inputs, outputs));
  }

  private void in(Happening happening, OfItem.Step step, Flow flow, long amount, BigDecimal value) {
    PoolKey key = key(step.goods());
    List<Pool.TruedUp> truedUp = pool(key).in(amount, value);
    line(happening, key, flow, step, amount, value);
    trueUp(happening, key, truedUp);
  }

  private void trueUp(Happening happening, PoolKey key, List<Pool.TruedUp> truedUp) {
    for (Pool.TruedUp each : truedUp) {
      if (each.more().signum() != 0) {
        OfItem.Step step = new OfItem.Step(null, each.account(), null, 0);
        line(happening, key, Flow.GONE, step, 0, each.more());
      }
    }
  }

  private void line(
      Happening happening,
      PoolKey key,
      Flow flow,
      OfItem.Step step,
      long amount,
      BigDecimal value) {
    lines.add(
        new Line(
            happening.id(),
            happening.kind(),
            happening.year(),
            key,
            flow,
            flow == Flow.GONE ? step.account() : null,
            step.place(),
            amount,
            value));
  }

  private PoolKey key(Goods goods) {
    String lot = method == CostMethod.SPECIFIC_LOT ? goods.lot() : null;
    return new PoolKey(lot, goods.container(), goods.grade());
  }

  private Pool pool(PoolKey key) {
    return pools.computeIfAbsent(
        key,
        k ->
            method == CostMethod.FIRST_IN_FIRST_OUT
                ? Pool.firstInFirstOut(scale)
                : Pool.movingAverage(scale));
  }

  /**
   * What one is taken to cost of which nothing is known: as others of its size, of its grade first.
   */
  private BigDecimal otherwise(PoolKey key) {
    BigDecimal ofSize = null;
    for (Map.Entry<PoolKey, Pool> other : pools.entrySet()) {
      BigDecimal each = other.getValue().each();
      if (each == null || !Objects.equals(other.getKey().container(), key.container())) {
        continue;
      }
      if (other.getKey().grade().equals(key.grade())) {
        return each;
      }
      ofSize = ofSize == null ? each : ofSize;
    }
    return ofSize == null ? BigDecimal.ZERO : ofSize;
  }

  private BigDecimal sum(List<Contribution> added) {
    return added.stream().map(Contribution::value).reduce(none(), BigDecimal::add);
  }

  private BigDecimal none() {
    return BigDecimal.ZERO.setScale(scale);
  }
}
