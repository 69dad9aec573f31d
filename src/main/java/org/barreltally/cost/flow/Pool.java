package org.barreltally.cost.flow;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Goods that are valued together, kept perpetually: moving average, or first in first out
 * (OpenStax, Principles of Accounting, volume 1, sections 10.2 and 10.3).
 *
 * <p>What a posting takes is reckoned from the exact value and number of what stands, rounded half
 * up once, and subtracted; what rounding leaves stays with the goods. So what came is always what
 * went and what stands, to the cent, and roundings do not add up.
 *
 * <p>Goods can go before the book has them: a sale at a table, a run told in the wrong order. They
 * go at the newest known cost and are owed; the next that come pay what they really cost.
 */
public final class Pool {

  private static final MathContext EXACT_ENOUGH = MathContext.DECIMAL128;

  /** Goods that came together: their number, and what all of them cost. */
  private record Layer(long amount, BigDecimal value) {}

  private record Owed(String account, long amount, BigDecimal value) {}

  /** What goods that were owed turned out to cost more (or, below zero, less) than they went at. */
  public record TruedUp(String account, BigDecimal more) {}

  private final boolean apart;
  private final int scale;
  private final Deque<Layer> layers = new ArrayDeque<>();
  private final Map<String, Deque<Layer>> gone = new HashMap<>();
  private final Deque<Owed> owed = new ArrayDeque<>();
  private BigDecimal newestEach;

  private Pool(boolean apart, int scale) {
    this.apart = apart;
    this.scale = scale;
  }

  /**
   * @param scale decimals of the currency
   */
  public static Pool movingAverage(int scale) {
    return new Pool(false, scale);
  }

  /**
   * @param scale decimals of the currency
   */
  public static Pool firstInFirstOut(int scale) {
    return new Pool(true, scale);
  }

  /** How many stand; below zero where more are owed. */
  public long amount() {
    return layers.stream().mapToLong(Layer::amount).sum()
        - owed.stream().mapToLong(Owed::amount).sum();
  }

  /** What they cost together. */
  public BigDecimal value() {
    BigDecimal stands = layers.stream().map(Layer::value).reduce(none(), BigDecimal::add);
    return owed.stream().map(Owed::value).reduce(stands, BigDecimal::subtract);
  }

  /** What one costs now, unrounded; null where none ever stood here. */
  public BigDecimal each() {
    long stands = layers.stream().mapToLong(Layer::amount).sum();
    if (stands == 0) {
      return newestEach;
    }
    return layers.stream()
        .map(Layer::value)
        .reduce(none(), BigDecimal::add)
        .divide(BigDecimal.valueOf(stands), EXACT_ENOUGH);
  }

  /**
   * Some come.
   *
   * @param amount above zero
   * @param value of all of them, in whole coins
   * @return what owed ones turned out to cost
   */
  public List<TruedUp> in(long amount, BigDecimal value) {
    newestEach = value.divide(BigDecimal.valueOf(amount), EXACT_ENOUGH);
    return add(new Layer(amount, value), false);
  }

  /**
   * Some go.
   *
   * @param amount above zero
   * @param account where to
   * @param otherwiseEach what one is taken to cost where nothing is known of these; unrounded
   * @return what they cost, in whole coins
   */
  public BigDecimal out(long amount, String account, Supplier<BigDecimal> otherwiseEach) {
    long left = amount;
    BigDecimal cost = none();
    BigDecimal each = each();
    while (left > 0 && !layers.isEmpty()) {
      Layer first = layers.poll();
      Layer taken = part(first, left);
      if (taken.amount() < first.amount()) {
        layers.addFirst(rest(first, taken));
      } else {
        newestEach = first.value().divide(BigDecimal.valueOf(first.amount()), EXACT_ENOUGH);
      }
      cost = cost.add(taken.value());
      went(account, taken);
      left -= taken.amount();
    }
    if (left > 0) {
      BigDecimal known = each == null ? otherwiseEach.get() : each;
      BigDecimal value =
          known.multiply(BigDecimal.valueOf(left)).setScale(scale, RoundingMode.HALF_UP);
      owed.add(new Owed(account, left, value));
      cost = cost.add(value);
    }
    return cost;
  }

  /** What came back cost, and what owed goods turned out to cost by it. */
  public record CameBack(BigDecimal value, List<TruedUp> truedUp) {}

  /**
   * Some come back from where they went, at what the newest that went there cost. Of more than ever
   * went there the rest comes at what one costs now.
   */
  public CameBack back(long amount, String account, Supplier<BigDecimal> otherwiseEach) {
    long left = amount;
    BigDecimal value = none();
    List<TruedUp> truedUp = new ArrayList<>();
    Deque<Owed> others = new ArrayDeque<>();
    while (left > 0 && !owed.isEmpty()) {
      Owed newest = owed.pollLast();
      if (!newest.account().equals(account)) {
        others.addFirst(newest);
        continue;
      }
      Layer forgiven = part(new Layer(newest.amount(), newest.value()), left);
      if (forgiven.amount() < newest.amount()) {
        Layer rest = rest(new Layer(newest.amount(), newest.value()), forgiven);
        owed.add(new Owed(account, rest.amount(), rest.value()));
      }
      value = value.add(forgiven.value());
      left -= forgiven.amount();
    }
    owed.addAll(others);
    Deque<Layer> went = gone.getOrDefault(account, new ArrayDeque<>());
    while (left > 0 && !went.isEmpty()) {
      Layer newest = went.pollLast();
      Layer returned = part(newest, left);
      if (returned.amount() < newest.amount()) {
        went.add(rest(newest, returned));
      }
      value = value.add(returned.value());
      left -= returned.amount();
      truedUp.addAll(add(returned, true));
    }
    if (left > 0) {
      BigDecimal each = each() == null ? otherwiseEach.get() : each();
      BigDecimal found =
          each.multiply(BigDecimal.valueOf(left)).setScale(scale, RoundingMode.HALF_UP);
      value = value.add(found);
      truedUp.addAll(add(new Layer(left, found), false));
    }
    return new CameBack(value, truedUp);
  }

  /** Pays what is owed, the longest owed first, and keeps the rest. */
  private List<TruedUp> add(Layer came, boolean asFirst) {
    List<TruedUp> truedUp = new ArrayList<>();
    Layer left = came;
    while (left.amount() > 0 && !owed.isEmpty()) {
      Owed first = owed.poll();
      Layer paying = part(left, first.amount());
      Layer paid = part(new Layer(first.amount(), first.value()), paying.amount());
      if (paid.amount() < first.amount()) {
        Layer rest = rest(new Layer(first.amount(), first.value()), paid);
        owed.addFirst(new Owed(first.account(), rest.amount(), rest.value()));
      }
      went(first.account(), paying);
      truedUp.add(new TruedUp(first.account(), paying.value().subtract(paid.value())));
      left = rest(left, paying);
    }
    if (left.amount() == 0) {
      return truedUp;
    }
    if (!apart && !layers.isEmpty()) {
      Layer all = layers.poll();
      layers.add(new Layer(all.amount() + left.amount(), all.value().add(left.value())));
    } else if (asFirst) {
      layers.addFirst(left);
    } else {
      layers.add(left);
    }
    return truedUp;
  }

  private void went(String account, Layer layer) {
    gone.computeIfAbsent(account, key -> new ArrayDeque<>()).add(layer);
  }

  /** At most so many of a layer, with their share of its value, rounded half up once. */
  private Layer part(Layer of, long most) {
    if (most >= of.amount()) {
      return of;
    }
    BigDecimal value =
        of.value()
            .multiply(BigDecimal.valueOf(most))
            .divide(BigDecimal.valueOf(of.amount()), scale, RoundingMode.HALF_UP);
    return new Layer(most, value);
  }

  private static Layer rest(Layer of, Layer taken) {
    return new Layer(of.amount() - taken.amount(), of.value().subtract(taken.value()));
  }

  private BigDecimal none() {
    return BigDecimal.ZERO.setScale(scale);
  }
}
