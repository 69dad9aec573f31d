package org.barreltally.shares;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Balances;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.measure.Unit;
import org.barreltally.pricing.Money;
import org.barreltally.shares.internal.ShareLog;
import org.barreltally.stock.FreeJars;
import org.barreltally.stock.NamedJars;
import org.barreltally.sugarbush.Basis;
import org.barreltally.sugarbush.Lease;
import org.barreltally.sugarbush.Leases;

/** Hands jars to landowners. Only what nobody was promised may go. */
@ApplicationScoped
public class HandingOver {

  private final Leases leases;
  private final NamedJars jars;
  private final FreeJars free;
  private final Balances balances;
  private final Containers containers;
  private final ListPrices prices;
  private final Ledger ledger;
  private final ShareLog log;
  private final Days days;
  private final Ids ids;

  HandingOver(
      Leases leases,
      NamedJars jars,
      FreeJars free,
      Balances balances,
      Containers containers,
      ListPrices prices,
      Ledger ledger,
      ShareLog log,
      Days days,
      Ids ids) {
    this.leases = leases;
    this.jars = jars;
    this.free = free;
    this.balances = balances;
    this.containers = containers;
    this.prices = prices;
    this.ledger = ledger;
    this.log = log;
    this.days = days;
    this.ids = ids;
  }

  /**
   * Hands jars over, all lines or none. More than is owed may go: the credit is then below zero.
   *
   * @throws org.barreltally.sugarbush.UnknownLease if there is no such lease
   * @throws org.barreltally.sugarbush.LeaseClosed if it was closed
   * @throws org.barreltally.lots.LotHeld if a lot is held
   * @throws org.barreltally.ledger.NotThatMuchThere if fewer stand in the room
   * @throws org.barreltally.stock.PromisedElsewhere if too few are free of promises
   * @throws NoListPrice if jars count by their list price and have none
   */
  @Transactional
  public HandedOver handOver(UUID id, HandOver said) {
    NamedJars.counts(said.lines());
    LocalDate on = said.on() == null ? days.today() : days.happened(said.on(), "on");
    Lease lease = leases.opened(id);
    String room = jars.room(said.room(), "room");
    List<Item> items = jars.locked(said.lines(), false);
    Map<Item, Long> pieces = NamedJars.together(items, said.lines());
    balances.require(room, pieces);
    free.require(pieces, (container, grade) -> 0L);
    List<HandedOver.Line> lines = new ArrayList<>();
    for (int n = 0; n < items.size(); n++) {
      lines.add(line(items.get(n), said.lines().get(n).count(), lease, on, "lines[" + n + "]"));
    }
    Movement.Builder movement =
        Movement.of(MovementKind.LANDOWNER_SHARE, days.during(on)).because(said.note());
    pieces.forEach((item, count) -> movement.move(room, PlaceCode.LANDOWNER, item.id(), count));
    HandedOver handed =
        new HandedOver(ids.next(), id, on, ledger.post(movement.build()), lines, said.note());
    log.keep(handed);
    return handed;
  }

  private HandedOver.Line line(Item item, long count, Lease lease, LocalDate on, String path) {
    Money price = prices.of(item, lease.terms(), on).orElse(null);
    if (price == null && lease.terms().basis() == Basis.LIST_VALUE) {
      throw new NoListPrice(item.container(), item.grade(), on, path + ".container");
    }
    return new HandedOver.Line(
        item.container(),
        item.grade(),
        item.lot(),
        count,
        containers.at(item.container()).netContents().in(Unit.ML),
        price);
  }
}
