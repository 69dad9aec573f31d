package org.barreltally.shops;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.barreltally.ledger.Balances;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.pricing.Money;
import org.barreltally.shops.internal.ShelfLog;
import org.barreltally.shops.internal.ShopRows;
import org.barreltally.stock.CountedTwice;
import org.barreltally.stock.JarLine;
import org.barreltally.stock.NamedJars;

/**
 * Counts the shelves of shops. What is gone since the last count was sold, broken or is missing,
 * and the terms of the day say what of it is due. The shelf is counted whole, so that nothing is
 * settled by what nobody looked at.
 */
@ApplicationScoped
public class CountingShelves {

  private final Shops shops;
  private final ShopRows rows;
  private final ShopPrices prices;
  private final NamedJars jars;
  private final Standing standing;
  private final Balances balances;
  private final Ledger ledger;
  private final ShelfLog log;
  private final Days days;
  private final Ids ids;

  CountingShelves(
      Shops shops,
      ShopRows rows,
      ShopPrices prices,
      NamedJars jars,
      Standing standing,
      Balances balances,
      Ledger ledger,
      ShelfLog log,
      Days days,
      Ids ids) {
    this.shops = shops;
    this.rows = rows;
    this.prices = prices;
    this.jars = jars;
    this.standing = standing;
    this.balances = balances;
    this.ledger = ledger;
    this.log = log;
    this.days = days;
    this.ids = ids;
  }

  /**
   * Takes a count and says what is due.
   *
   * @throws UnknownShop if there is none of that code
   * @throws org.barreltally.refusal.InvalidField if a line without lot cannot be shared out
   * @throws NotCounted if the book has jars there that no line names
   * @throws CountedTwice if two lines name the same jars
   * @throws ShelfChangedLater if jars came, went or were counted on a later day
   * @throws NoShopPrice if jars that are gone have no price
   */
  @Transactional
  public ShelfCount count(String code, CountShop said) {
    rows.lock(code);
    Shop shop = shops.at(code);
    LocalDate on = said.on() == null ? days.today() : days.happened(said.on(), "on");
    log.newestDay(code)
        .filter(on::isBefore)
        .ifPresent(
            newest -> {
              throw new ShelfChangedLater(on, newest);
            });
    Terms terms = rows.terms(code, on);
    List<CountShop.Line> counted = WithoutLot.shared(said.lines(), standing.at(shop.place()));
    List<Item> items =
        jars.locked(
            counted.stream()
                .map(line -> new JarLine(line.container(), line.lot(), line.count()))
                .toList(),
            true);
    requireEachOnce(items);
    Map<UUID, Long> book = balances.locked(shop.place(), items);
    requireAll(shop, items);
    List<ShelfCount.Line> lines = new ArrayList<>();
    for (int n = 0; n < items.size(); n++) {
      lines.add(line(items.get(n), book, counted.get(n), terms, on, "lines[" + n + "]"));
    }
    Money due = lines.stream().map(ShelfCount.Line::due).reduce(prices.none(), Money::plus);
    ShelfCount count =
        ShelfCount.of(ids.next(), code, on, post(shop, on, items, lines), terms, lines, due);
    log.keep(count, said.by());
    return count;
  }

  private ShelfCount.Line line(
      Item item,
      Map<UUID, Long> book,
      CountShop.Line said,
      Terms terms,
      LocalDate on,
      String path) {
    long there = book.getOrDefault(item.id(), 0L);
    Gone gone = Gone.of(there, said);
    boolean charged = gone.sold() > 0 || gone.broken() > 0 || gone.missing() > 0;
    Money price = charged ? prices.of(item, terms, on, path) : null;
    return new ShelfCount.Line(
        item.container(),
        item.grade(),
        item.lot(),
        there,
        said.count(),
        gone.sold(),
        gone.broken(),
        gone.missing(),
        price,
        price == null ? prices.none() : gone.due(price, terms));
  }

  private static void requireEachOnce(List<Item> items) {
    Set<UUID> seen = new HashSet<>();
    for (int n = 0; n < items.size(); n++) {
      if (!seen.add(items.get(n).id())) {
        throw new CountedTwice(
            items.get(n).lot(), items.get(n).container(), "lines[" + n + "].lot");
      }
    }
  }

  private void requireAll(Shop shop, List<Item> counted) {
    Set<UUID> named = counted.stream().map(Item::id).collect(Collectors.toSet());
    List<Standing.Jars> left =
        standing.at(shop.place()).stream().filter(jar -> !named.contains(jar.item())).toList();
    if (!left.isEmpty()) {
      throw new NotCounted(
          left.stream()
              .limit(10)
              .map(jar -> "%d × %s of lot %s".formatted(jar.count(), jar.container(), jar.lot()))
              .collect(Collectors.joining(", ")));
    }
  }

  private UUID post(Shop shop, LocalDate on, List<Item> items, List<ShelfCount.Line> lines) {
    Movement.Builder movement = Movement.of(MovementKind.SHELF_COUNT, days.during(on));
    for (int n = 0; n < items.size(); n++) {
      UUID item = items.get(n).id();
      ShelfCount.Line line = lines.get(n);
      // What turned up comes first, so that more can be sold than the book had.
      movement.move(shop.place(), PlaceCode.UNEXPLAINED, item, line.missing());
      movement.move(shop.place(), PlaceCode.CUSTOMER, item, line.sold());
      movement.move(shop.place(), PlaceCode.BROKEN, item, line.broken());
    }
    return movement.movesNothing() ? null : ledger.post(movement.build());
  }
}
