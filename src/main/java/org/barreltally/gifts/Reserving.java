package org.barreltally.gifts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.barreltally.gifts.internal.GoodsRows;
import org.barreltally.gifts.internal.StepRows;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.Reservations;

/** Reserves the jars of an order, all or nothing, and lets them go again. */
@ApplicationScoped
public class Reserving {

  private final GiftOrders orders;
  private final Promises promises;
  private final StepRows steps;
  private final GoodsRows goods;
  private final Days days;
  private final Ids ids;

  Reserving(
      GiftOrders orders, Promises promises, StepRows steps, GoodsRows goods, Days days, Ids ids) {
    this.orders = orders;
    this.promises = promises;
    this.steps = steps;
    this.goods = goods;
    this.days = days;
    this.ids = ids;
  }

  /**
   * Reserves the jars of every recipient who still waits for them; the others keep what they have.
   *
   * @throws CannotPromise naming what is short; nothing is reserved then
   */
  @Transactional
  public void reserve(UUID id, Set<String> versions) {
    GiftOrder order = orders.opened(id, versions);
    List<Need> needs =
        order.lines().stream()
            .filter(line -> line.state() == RecipientState.CONFIRMED)
            .filter(line -> order.promises(line.n()).isEmpty())
            .flatMap(line -> Needs.of(line.n(), order.box(line), line.count()).stream())
            .toList();
    List<Promise> reserved = promises.reserve(needs);
    if (!reserved.isEmpty()) {
      goods.promise(id, kept(id, Step.RESERVE), reserved);
    }
  }

  /** Lets go what is reserved for recipients whose jars are not picked yet. */
  @Transactional
  public void release(UUID id, Set<String> versions) {
    GiftOrder order = orders.opened(id, versions);
    List<Promise> open =
        order.promises().stream()
            .filter(p -> order.line(p.n()).state() == RecipientState.CONFIRMED)
            .toList();
    if (!open.isEmpty()) {
      promises.end(open, Reservations.End.RELEASED);
      goods.promise(id, kept(id, Step.RELEASE), open.stream().map(p -> p.times(-1)).toList());
    }
  }

  private UUID kept(UUID order, Step step) {
    UUID id = ids.next();
    steps.add(
        order,
        List.of(
            new Done(
                id, null, step, null, null, days.today(), null, null, null, null, null, null)));
    return id;
  }
}
