package org.barreltally.barrels;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.barreltally.barrels.internal.BarrelQuery;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;
import org.barreltally.lots.LotHeld;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Uncertain;
import org.barreltally.measure.Unit;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal;

/** Works out what is drawn from barrels and heel vessels. */
@ApplicationScoped
public class Drawing {

  /** More vessels are not drawn into one run. */
  private static final int MOST_DRAWS = 100;

  private static final String LESS_SURE =
      """
      UPDATE fillings f SET mass_u = left_over.u
        FROM unnest(?::uuid[], ?::float8[]) AS left_over (filling, u) WHERE f.id = left_over.filling
      """;

  private final BarrelQuery query;
  private final Readings readings;
  private final EntityManager entities;

  public Drawing(BarrelQuery query, Readings readings, EntityManager entities) {
    this.query = query;
    this.readings = readings;
    this.entities = entities;
  }

  /** What would be drawn, as the book stands now; nothing is kept from others. */
  public List<Draw> lookAt(List<DrawOrder> orders) {
    Set<String> tags = tags(orders);
    return resolve(orders, query.read("v.tag = ANY (?)", MOST_DRAWS, Column.of("text", tags)));
  }

  /**
   * What is drawn; the vessels are kept from others until the transaction ends.
   *
   * @param heelTag the vessel that the run will keep its heel in, kept from others too; may be null
   */
  public List<Draw> take(List<DrawOrder> orders, String heelTag) {
    Set<String> tags = tags(orders);
    if (heelTag != null) {
      tags.add(heelTag);
    }
    return resolve(orders, query.lock(tags));
  }

  /** Records that part draws made the remainder less sure: call after the movement is posted. */
  public void taken(List<Draw> draws) {
    Bundle write = Bundle.byKeys();
    taken(draws, write);
    write.send(entities);
  }

  /** As {@link #taken(List)}, together with other things. */
  public void taken(List<Draw> draws, Bundle write) {
    write.add(
        LESS_SURE,
        Column.of("uuid", draws, draw -> draw.from().filling()),
        Column.of(
            "float8",
            draws,
            draw -> draw.all() ? 0 : Math.hypot(draw.from().grams().u(), draw.grams().u())));
  }

  private List<Draw> resolve(List<DrawOrder> orders, List<Barrel> found) {
    Map<String, Barrel> byTag =
        found.stream().collect(Collectors.toMap(Barrel::tag, Function.identity()));
    List<Draw> draws = new ArrayList<>();
    for (int i = 0; i < orders.size(); i++) {
      try {
        draws.add(draw(orders.get(i), byTag));
      } catch (Refusal refusal) {
        throw refusal.under("draws[" + i + "]");
      }
    }
    return draws;
  }

  private static Set<String> tags(List<DrawOrder> orders) {
    if (orders == null || orders.isEmpty()) {
      throw new InvalidField("draws", "Name at least one barrel or vessel to draw from.");
    }
    if (orders.size() > MOST_DRAWS) {
      throw new InvalidField("draws", "Draw from at most " + MOST_DRAWS + " vessels in one run.");
    }
    Set<String> tags = new HashSet<>();
    for (int i = 0; i < orders.size(); i++) {
      DrawOrder order = orders.get(i);
      String at = "draws[" + i + "].";
      if (order == null || order.tag() == null) {
        throw new InvalidField(at + "barrel", "Name a barrel, or a vessel that keeps a heel.");
      }
      if (order.barrel() != null && order.vessel() != null) {
        throw new InvalidField(at + "vessel", "Name either a barrel or a vessel in one draw.");
      }
      if (!tags.add(order.tag())) {
        throw new InvalidField(
            at + order.tagField(), order.tag() + " is named twice. Put its draws into one.");
      }
    }
    return tags;
  }

  private Draw draw(DrawOrder order, Map<String, Barrel> byTag) {
    Barrel barrel = byTag.get(order.tag());
    if (barrel == null) {
      throw new UnknownVessel(order.tag(), order.tagField());
    }
    if (barrel.lot().held()) {
      throw new LotHeld(barrel.lot().code(), order.tagField());
    }
    if (barrel.state() == BarrelState.DRAINED) {
      throw new Drained(order.tag(), order.tagField());
    }
    boolean all = Boolean.TRUE.equals(order.all());
    if (all == (order.weight() != null)) {
      throw new InvalidField("weight", "Say either all: true, or the weight drawn.");
    }
    return part(barrel, all ? null : order.weight());
  }

  /**
   * A part of what a vessel holds.
   *
   * @param weight as a scale reads in air; null for all of it
   * @throws MoreThanItHolds if it does not hold that much
   */
  Draw part(Barrel barrel, Quantity weight) {
    if (weight == null) {
      return new Draw(barrel, barrel.grams(), true);
    }
    Uncertain wanted = readings.drawn(weight, barrel.lot().brix().value(), "weight");
    return within(barrel, wanted, weight);
  }

  /** A draw above the book by no more than its uncertainty takes all that is there. */
  private static Draw within(Barrel barrel, Uncertain wanted, Quantity said) {
    Uncertain there = barrel.grams();
    if (Math.round(wanted.value()) < there.value()) {
      return new Draw(barrel, wanted, false);
    }
    if (wanted.value() > there.value() && wanted.differsFrom(there)) {
      double uncertainty = Uncertain.COVERAGE * Math.hypot(there.u(), wanted.u());
      throw new MoreThanItHolds(
          barrel.tag(),
          said,
          Quantity.rounded(barrel.syrup().weightInAir(there.value()), Unit.G, 0).to(said.unit(), 2),
          Quantity.rounded(uncertainty, Unit.G, 0).to(said.unit(), 2));
    }
    return new Draw(barrel, new Uncertain(there.value(), wanted.u()), true);
  }
}
