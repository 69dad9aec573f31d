package org.barreltally.shops;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
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
import org.barreltally.shops.internal.ShelfLog;
import org.barreltally.shops.internal.ShopRows;
import org.barreltally.stock.FreeJars;
import org.barreltally.stock.NamedJars;

/** Brings jars to shops and fetches them home. */
@ApplicationScoped
public class Bringing {

  private final Shops shops;
  private final ShopRows rows;
  private final NamedJars jars;
  private final Balances balances;
  private final FreeJars free;
  private final Ledger ledger;
  private final ShelfLog log;
  private final Days days;
  private final Ids ids;

  Bringing(
      Shops shops,
      ShopRows rows,
      NamedJars jars,
      Balances balances,
      FreeJars free,
      Ledger ledger,
      ShelfLog log,
      Days days,
      Ids ids) {
    this.shops = shops;
    this.rows = rows;
    this.jars = jars;
    this.balances = balances;
    this.free = free;
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
   * @throws org.barreltally.ledger.NotThatMuchThere if fewer stand in the room
   * @throws org.barreltally.stock.PromisedElsewhere if too few are free of promises
   */
  @Transactional
  public Delivery bring(String code, MoveJars said) {
    NamedJars.counts(said.lines());
    Shop shop = locked(code);
    String room = jars.room(said.room(), "room");
    Map<Item, Long> pieces = NamedJars.together(jars.locked(said.lines(), false), said.lines());
    balances.require(room, pieces);
    free.require(pieces, (container, grade) -> 0L);
    return moved(shop, Delivery.Direction.DELIVERED, room, pieces, said);
  }

  /**
   * Fetches jars home from a shop; held lots may come home.
   *
   * @throws UnknownShop if there is none of that code
   * @throws org.barreltally.ledger.NotThatMuchThere if the book has fewer there: count the shelf
   *     first
   */
  @Transactional
  public Delivery fetch(String code, MoveJars said) {
    NamedJars.counts(said.lines());
    Shop shop = locked(code);
    String room = jars.room(said.room(), "room");
    Map<Item, Long> pieces = NamedJars.together(jars.locked(said.lines(), true), said.lines());
    balances.require(shop.place(), pieces);
    return moved(shop, Delivery.Direction.FETCHED, room, pieces, said);
  }

  /**
   * What came to a shop, or home from it.
   *
   * @throws UnknownShop if there is none of that code
   * @throws UnknownDelivery if nothing of that id came to it
   */
  @Transactional
  public Delivery at(String code, UUID id) {
    return log.deliveries(shops.at(code).code(), days.today()).stream()
        .filter(delivery -> delivery.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new UnknownDelivery(id));
  }

  private Shop locked(String code) {
    rows.lock(code);
    return shops.at(code);
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
