package org.barreltally.sales.away;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.AfterPosting;
import org.barreltally.ledger.Balances;
import org.barreltally.ledger.CannotBeTakenBack;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Items;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.Place;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.ledger.Places;
import org.barreltally.lots.Lots;
import org.barreltally.pricing.CurrencyMismatch;
import org.barreltally.refusal.InvalidField;
import org.barreltally.sales.Sale;
import org.barreltally.sales.Sales;
import org.barreltally.sales.internal.ReturnBook;
import org.barreltally.settings.FarmSettings;
import org.barreltally.stock.NoSuchJars;

/**
 * Jars that come back from buyers. They wait apart, where nobody can promise them, until somebody
 * has looked them over; only sound ones become stock again.
 */
@ApplicationScoped
public class Returns implements AfterPosting {

  /** The place where returned jars wait. */
  public static final String TO_INSPECT = "to-inspect";

  private final Sales sales;
  private final ReturnBook book;
  private final Containers containers;
  private final Lots lots;
  private final Items items;
  private final Places places;
  private final Balances balances;
  private final Ledger ledger;
  private final FarmSettings settings;
  private final Days days;

  Returns(
      Sales sales,
      ReturnBook book,
      Containers containers,
      Lots lots,
      Items items,
      Places places,
      Balances balances,
      Ledger ledger,
      FarmSettings settings,
      Days days) {
    this.sales = sales;
    this.book = book;
    this.containers = containers;
    this.lots = lots;
    this.items = items;
    this.places = places;
    this.balances = balances;
    this.ledger = ledger;
    this.settings = settings;
    this.days = days;
  }

  /**
   * Takes jars of a sale back, to be inspected.
   *
   * @throws MoreThanSold if the sale had fewer of a size that have not come back yet
   * @throws InvalidField naming fields that need mending
   */
  @Transactional
  public Returned takeBack(UUID saleId, TakeBack said) {
    ReturnRules.check(said);
    String currency = settings.now().said().currency();
    if (said.refund() != null && !said.refund().currency().equals(currency)) {
      throw new CurrencyMismatch(said.refund().currency(), currency, "refund.currency");
    }
    Instant at = said.at() == null ? days.now() : days.happened(said.at(), "at");
    book.lock(saleId);
    Sale sale = sales.at(saleId);
    Map<String, Long> open = new HashMap<>();
    if (!sale.undone()) {
      sale.lines().forEach(line -> open.merge(line.container(), line.count(), Long::sum));
      book.returnedBySize(saleId).forEach((size, back) -> open.merge(size, -back, Long::sum));
    }
    Map<Item, Long> pieces = new LinkedHashMap<>();
    for (int n = 0; n < said.lines().size(); n++) {
      TakeBack.Line line = said.lines().get(n);
      String field = "lines[" + n + "]";
      Item item = jars(line.container(), line.lot(), field);
      long left = open.getOrDefault(line.container(), 0L);
      if (line.count() > left) {
        throw new MoreThanSold(line.container(), left, line.count(), field + ".count");
      }
      open.put(line.container(), left - line.count());
      pieces.merge(item, line.count(), Long::sum);
    }
    Movement.Builder movement = Movement.of(MovementKind.SALE_RETURN, at).because(said.reason());
    pieces.forEach(
        (item, count) -> movement.move(PlaceCode.CUSTOMER, TO_INSPECT, item.id(), count));
    balances.beforeNaming(pieces.keySet());
    UUID posted = ledger.post(movement.build());
    return at(book.keep(saleId, posted, said.reason(), said.refund(), pieces));
  }

  /**
   * Notes how returned jars were found.
   *
   * @throws UnknownReturn if there is none of that id
   * @throws MoreThanReturned if fewer wait
   */
  @Transactional
  public Returned inspect(UUID returnId, Inspect said) {
    ReturnRules.check(said);
    String room = room(said.to());
    book.lock(at(returnId).sale());
    Map<UUID, Long> waiting = new HashMap<>();
    at(returnId).lines().forEach(line -> waiting.put(line.item(), line.toInspect()));
    Movement.Builder movement =
        Movement.of(MovementKind.SALE_RETURN, days.now()).because(said.note());
    for (int n = 0; n < said.lines().size(); n++) {
      Inspect.Line line = said.lines().get(n);
      UUID item = jars(line.container(), line.lot(), "lines[" + n + "]").id();
      long sound = ReturnRules.orNone(line.sound());
      long broken = ReturnRules.orNone(line.broken());
      long discarded = ReturnRules.orNone(line.discarded());
      long there = waiting.getOrDefault(item, 0L);
      long all = sound + broken + discarded;
      if (all > there) {
        throw new MoreThanReturned(line.container(), line.lot(), there, all, "lines[" + n + "]");
      }
      waiting.put(item, there - all);
      movement.move(TO_INSPECT, room, item, sound);
      movement.move(TO_INSPECT, PlaceCode.BROKEN, item, broken);
      movement.move(TO_INSPECT, PlaceCode.DISCARDED, item, discarded);
    }
    if (movement.movesNothing()) {
      throw new InvalidField("lines", "Say how many were sound, broken or discarded.");
    }
    book.inspected(returnId, ledger.post(movement.build()), said.note());
    return at(returnId);
  }

  /**
   * A return with what of it waits for inspection.
   *
   * @throws UnknownReturn if there is none of that id
   */
  @Transactional
  public Returned at(UUID id) {
    return book.find(id).orElseThrow(() -> new UnknownReturn(id));
  }

  /** The returns of a sale that were not taken back, in the order they were recorded. */
  @Transactional
  public List<Returned> of(UUID sale) {
    return book.ofSale(sale);
  }

  /** A sale of which jars came back stands: its return has to be taken back first. */
  @Override
  public void reversed(UUID original) {
    if (book.hasReturns(original)) {
      throw new CannotBeTakenBack(
          original, "jars of that sale came back since; take the return back first");
    }
  }

  private Item jars(String container, String lot, String field) {
    containers.named(container, field + ".container");
    lots.named(lot, field + ".lot");
    return items
        .jarsOf(lot, container)
        .orElseThrow(() -> new NoSuchJars(lot, container, field + ".container"));
  }

  private String room(String code) {
    Place place = places.atHand(code == null ? PlaceCode.COOL_ROOM : code, "to");
    if (place.kind() != Place.Kind.HOME) {
      throw new InvalidField("to", "Sound jars go to a room at home.");
    }
    return place.code();
  }
}
