package org.barreltally.shops;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.ledger.Balances;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.NotThatMuchThere;
import org.barreltally.ledger.Pools;
import org.barreltally.ledger.ShortOfStock;
import org.barreltally.shops.internal.ShelfLog;
import org.barreltally.shops.internal.ShopRows;
import org.barreltally.stock.NamedJars;

/** Brings jars to shops and fetches them home. */
@ApplicationScoped
public class Bringing {

  private final Shops shops;
  private final ShopRows rows;
  private final NamedJars jars;
  private final Balances balances;
  private final Pools pools;
  private final Ledger ledger;
  private final ShelfLog log;
  private final Days days;
  private final Ids ids;

  Bringing(
      Shops shops,
      ShopRows rows,
      NamedJars jars,
      Balances balances,
      Pools pools,
      Ledger ledger,
      ShelfLog log,
      Days days,
      Ids ids) {
    this.shops = shops;
    this.rows = rows;
    this.jars = jars;
    this.balances = balances;
    this.pools = pools;
    this.ledger = ledger;
    this.log = log;
    this.days = days;
    this.ids = ids;
  }

  /**
   * Brings jars to a shop. Only what nobody was promised may go.
   *
   * @throws UnknownShop if there is none of that code
   * @throws org.barreltally.lots.LotHeld if a lot is held
   * @throws NotThatMuchThere if fewer stand in the room
   * @throws ShortOfStock if too few are free of promises
   */
  @Transactional
  public Delivery bring(String code, MoveJars said) {
    NamedJars.counts(said.lines());
    Shop shop = locked(code);
    String room = jars.room(said.room(), "room");
    Map<Item, Long> pieces = NamedJars.together(jars.locked(said.lines(), false), said.lines());
    requireThere(room, pieces);
    requireFree(pieces);
    return moved(shop, Delivery.Direction.DELIVERED, room, pieces, said);
  }

  /**
   * Fetches jars home from a shop; held lots may come home.
   *
   * @throws UnknownShop if there is none of that code
   * @throws NotThatMuchThere if the book has fewer there: count the shelf first
   */
  @Transactional
  public Delivery fetch(String code, MoveJars said) {
    NamedJars.counts(said.lines());
    Shop shop = locked(code);
    String room = jars.room(said.room(), "room");
    Map<Item, Long> pieces = NamedJars.together(jars.locked(said.lines(), true), said.lines());
    requireThere(shop.place(), pieces);
    return moved(shop, Delivery.Direction.FETCHED, room, pieces, said);
  }

  private Shop locked(String code) {
    rows.lock(code);
    return shops.at(code);
  }

  private void requireThere(String place, Map<Item, Long> pieces) {
    Map<UUID, Long> standing = balances.locked(place, pieces.keySet());
    pieces.forEach(
        (item, count) -> {
          long there = standing.getOrDefault(item.id(), 0L);
          if (there < count) {
            throw new NotThatMuchThere(place, item.lot(), item.container(), there, count);
          }
        });
  }

  /** The pools are locked with the jars, so nobody promises meanwhile. */
  private void requireFree(Map<Item, Long> pieces) {
    List<ShortOfStock.Shortage> shortages = new ArrayList<>();
    NamedJars.byPool(pieces)
        .forEach(
            (container, grades) ->
                grades.forEach(
                    (grade, wanted) -> {
                      long free =
                          pools.list(container, grade).stream()
                              .mapToLong(Pools.Pool::available)
                              .sum();
                      if (free < wanted) {
                        shortages.add(
                            new ShortOfStock.Shortage(container, grade, wanted, Math.max(0, free)));
                      }
                    }));
    if (!shortages.isEmpty()) {
      throw new ShortOfStock(shortages);
    }
  }

  private Delivery moved(
      Shop shop, Delivery.Direction direction, String room, Map<Item, Long> pieces, MoveJars said) {
    boolean out = direction == Delivery.Direction.DELIVERED;
    LocalDate on = said.on() == null ? days.today() : days.happened(said.on(), "on");
    Movement.Builder movement =
        Movement.of(MovementKind.CONSIGNMENT, days.during(on)).because(said.note());
    pieces.forEach(
        (item, count) ->
            movement.move(out ? room : shop.place(), out ? shop.place() : room, item.id(), count));
    List<Delivery.Line> lines =
        pieces.entrySet().stream()
            .map(
                e ->
                    new Delivery.Line(
                        e.getKey().container(), e.getKey().grade(), e.getKey().lot(), e.getValue()))
            .toList();
    Delivery delivery =
        new Delivery(
            ids.next(),
            shop.code(),
            direction,
            on,
            ledger.post(movement.build()),
            lines,
            said.note());
    log.keep(delivery);
    return delivery;
  }
}
