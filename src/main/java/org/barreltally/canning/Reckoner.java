package org.barreltally.canning;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.barreltally.barrels.Draw;
import org.barreltally.containers.Container;
import org.barreltally.containers.Containers;
import org.barreltally.measure.Dimension;
import org.barreltally.measure.InstrumentKind;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Syrup;
import org.barreltally.measure.Uncertain;
import org.barreltally.measure.Unit;
import org.barreltally.refusal.InvalidField;
import org.barreltally.settings.FarmSettings;

/** Works out where a batch goes. */
@ApplicationScoped
class Reckoner {

  /** More jars are not filled of one size in one run. */
  static final int MOST_JARS = 1_000_000;

  private static final int MOST_FILLS = 100;

  private final Containers containers;
  private final FarmSettings settings;

  Reckoner(Containers containers, FarmSettings settings) {
    this.containers = containers;
    this.settings = settings;
  }

  /**
   * @throws InvalidField naming what is missing or out of its range
   * @throws NotEnoughSyrup if the counts need more than there is, beyond the uncertainty
   */
  Reckoning reckon(CanningOrder order, List<Draw> draws) {
    checkTarget(order.targetBrix());
    Batch batch = Batch.pour(draws, order.targetBrix());
    Syrup syrup = batch.syrup();
    double filter = weighed(order.filterHoldUp(), syrup, "filterHoldUp");
    Uncertain heel = heel(order.heel(), syrup);
    double overfill = weighed(order.overfill(), syrup, "overfill");
    double forJars = batch.grams().value() - filter - heel.value();
    List<Fill> fills = fills(order.fills(), syrup, overfill, forJars);
    double needed = fills.stream().mapToDouble(Fill::grams).sum();
    Uncertain unexplained = new Uncertain(forJars - needed, uncertainty(batch, fills, heel));
    if (unexplained.value() < 0 && unexplained.differsFrom(Uncertain.exact(0))) {
      throw new NotEnoughSyrup(
          pounds(syrup, Math.max(0, forJars)), pounds(syrup, needed), shortFill(fills));
    }
    return new Reckoning(batch, order.fillTemperature(), fills, filter, heel, unexplained);
  }

  private static void checkTarget(Double targetBrix) {
    if (targetBrix != null && !(targetBrix >= 50 && targetBrix <= 70)) {
      throw new InvalidField("targetBrix", "A target for syrup is between 50 and 70 °Bx.");
    }
  }

  /** A weight in air that may be missing, as grams of mass. */
  private static double weighed(Quantity weight, Syrup syrup, String field) {
    if (weight == null) {
      return 0;
    }
    if (weight.unit().dimension() != Dimension.MASS) {
      throw new InvalidField(
          field + ".unit",
          "Give a weight in lb, oz, kg or g, not in " + weight.unit().code() + ".");
    }
    if (weight.signum() < 0) {
      throw new InvalidField(field, "A weight is not less than nothing.");
    }
    return syrup.massFromWeight(weight.doubleIn(Unit.G));
  }

  private List<Fill> fills(
      List<CanningOrder.FillOrder> orders, Syrup syrup, double overfill, double forJars) {
    check(orders);
    List<Fill> fills = new ArrayList<>();
    double needed = 0;
    int rest = -1;
    for (int i = 0; i < orders.size(); i++) {
      CanningOrder.FillOrder order = orders.get(i);
      Container container = containers.named(order.container(), "fills[" + i + "].container");
      double each = syrup.gramsForML20(container.netML());
      int possible = (int) Math.max(0, Math.floor(forJars / (each + overfill)));
      int count = order.takesTheRest() ? 0 : order.count();
      Fill fill = new Fill(container, each, overfill, count, order.brokenOrNone(), possible);
      fills.add(fill);
      needed += fill.grams();
      if (order.takesTheRest()) {
        rest = i;
      }
    }
    if (rest >= 0) {
      Fill empty = fills.get(rest);
      double left = (forJars - needed) / (empty.gramsEach() + overfill);
      fills.set(rest, withCount(empty, (int) Math.max(0, Math.floor(left))));
    }
    return fills;
  }

  private static Fill withCount(Fill fill, int count) {
    return new Fill(
        fill.container(),
        fill.gramsEach(),
        fill.overfillGrams(),
        count,
        fill.broken(),
        fill.possible());
  }

  private static void check(List<CanningOrder.FillOrder> orders) {
    if (orders == null || orders.isEmpty()) {
      throw new InvalidField("fills", "Name at least one container size to fill.");
    }
    if (orders.size() > MOST_FILLS) {
      throw new InvalidField("fills", "At most " + MOST_FILLS + " sizes are filled in one run.");
    }
    Set<String> seen = new HashSet<>();
    boolean rest = false;
    for (int i = 0; i < orders.size(); i++) {
      CanningOrder.FillOrder order = orders.get(i);
      String at = "fills[" + i + "]";
      if (order == null || order.container() == null) {
        throw new InvalidField(at + ".container", "Name the container, for example PT.");
      }
      if (!seen.add(order.container())) {
        throw new InvalidField(
            at + ".container", order.container() + " is named twice. Put its counts together.");
      }
      if (order.takesTheRest() == (order.count() != null)) {
        throw new InvalidField(at + ".count", "Give a count, or rest: true in a what-if.");
      }
      if (order.takesTheRest() && rest) {
        throw new InvalidField(at + ".rest", "Only one size can take the rest.");
      }
      rest |= order.takesTheRest();
      inRange(order.count(), at + ".count");
      inRange(order.broken(), at + ".broken");
    }
  }

  private static void inRange(Integer count, String field) {
    if (count != null && (count < 0 || count > MOST_JARS)) {
      throw new InvalidField(field, "Give a whole number from 0 to " + MOST_JARS + ".");
    }
  }

  /**
   * How unsure the remainder is: the draws, the heel on the platform scale, and the jars, whose
   * common scale errs the same way for all of them.
   */
  private double uncertainty(Batch batch, List<Fill> fills, Uncertain heel) {
    double eachJar =
        Uncertain.within(0, settings.instruments().halfWidth(InstrumentKind.BENCH_SCALE)).u();
    double jars = eachJar * fills.stream().mapToInt(f -> f.count() + f.broken()).sum();
    return Math.hypot(batch.grams().u(), Math.hypot(jars, heel.u()));
  }

  private Uncertain heel(CanningOrder.HeelOrder heel, Syrup syrup) {
    return heel == null
        ? Uncertain.exact(0)
        : Uncertain.within(
            weighed(heel.weight(), syrup, "heel.weight"),
            settings.instruments().halfWidth(InstrumentKind.PLATFORM_SCALE));
  }

  private static Quantity pounds(Syrup syrup, double grams) {
    return Quantity.rounded(syrup.weightInAir(grams), Unit.G, 3).to(Unit.LB, 1);
  }

  private static String shortFill(List<Fill> fills) {
    return fills.stream()
        .filter(f -> f.count() > 0)
        .max((a, b) -> Double.compare(a.grams(), b.grams()))
        .map(f -> f.container().code())
        .orElse("");
  }
}
