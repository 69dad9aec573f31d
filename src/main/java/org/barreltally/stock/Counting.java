package org.barreltally.stock;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Balances;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Items;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.ledger.Places;
import org.barreltally.lots.Holds;
import org.barreltally.lots.Lot;
import org.barreltally.lots.Lots;
import org.barreltally.lots.UnknownLot;
import org.barreltally.stock.StockCount.Line;
import org.barreltally.stock.internal.CountRows;

/**
 * Counts a shelf. What was counted is a fact and never refused for being off: the book follows it,
 * against {@code unexplained}. Only where labels were probably mixed up are both lots held and
 * nothing posted, because the jars are there and only their names are wrong.
 */
@ApplicationScoped
public class Counting {

  private final Places places;
  private final Containers containers;
  private final Lots lots;
  private final Items items;
  private final Balances balances;
  private final Ledger ledger;
  private final Holds holds;
  private final CountRows rows;
  private final Days days;
  private final Ids ids;

  Counting(
      Places places,
      Containers containers,
      Lots lots,
      Items items,
      Balances balances,
      Ledger ledger,
      Holds holds,
      CountRows rows,
      Days days,
      Ids ids) {
    this.places = places;
    this.containers = containers;
    this.lots = lots;
    this.items = items;
    this.balances = balances;
    this.ledger = ledger;
    this.holds = holds;
    this.rows = rows;
    this.days = days;
    this.ids = ids;
  }

  private record Jar(String lot, String container) {}

  /**
   * Compares what was counted with the book, and lets the book follow. Everybody else who moves,
   * grades or holds these lots waits meanwhile.
   *
   * @throws CountedTwice if a lot and size stands in two lines
   * @throws NoSuchJars if a lot was never packed in that size
   * @throws NothingShort if a cause is given for jars that are not short
   */
  @Transactional
  public StockCount count(CountShelf said) {
    return count(said, false);
  }

  /**
   * As {@link #count(CountShelf)}, compared with what the book had when it was counted: what moved
   * since is left out.
   */
  @Transactional
  public StockCount countAsOf(CountShelf said) {
    return count(said, true);
  }

  /**
   * Makes sure that what was counted is known, and changes nothing.
   *
   * @return when it was counted
   * @throws CountedTwice if a lot and size stands in two lines
   * @throws NoSuchJars if a lot was never packed in that size
   */
  @Transactional
  public Instant check(CountShelf said) {
    places.own(said.place(), "place");
    jars(said.lines());
    return days.happened(said.countedAt(), "countedAt");
  }

  /**
   * What was counted beside what the book had then, with the mix-ups that are suspected; nothing is
   * posted, held or kept.
   *
   * @throws CountedTwice if a lot and size stands in two lines
   * @throws NoSuchJars if a lot was never packed in that size
   */
  @Transactional
  public List<Line> compare(CountShelf said) {
    String place = places.own(said.place(), "place").code();
    Instant at = days.happened(said.countedAt(), "countedAt");
    return compared(said, place, at, true, jars(said.lines()));
  }

  private StockCount count(CountShelf said, boolean asOf) {
    String place = places.own(said.place(), "place").code();
    Instant at = days.happened(said.countedAt(), "countedAt");
    Map<Jar, Item> jars = jars(said.lines());
    List<Line> lines = compared(said, place, at, asOf, jars);
    requireShort(lines);
    UUID movement = follow(place, at, lines, jars);
    lines.stream()
        .filter(line -> line.suspectedSwap() != null)
        .forEach(line -> holds.hold(line.lot(), whyHeld(line, place)));
    StockCount count = new StockCount(ids.next(), place, at, said.by(), movement, lines);
    rows.keep(count);
    return count;
  }

  private List<Line> compared(
      CountShelf said, String place, Instant at, boolean asOf, Map<Jar, Item> jars) {
    Map<UUID, Long> book = balances.locked(place, jars.values());
    Map<UUID, Long> since = asOf ? rows.movedAfter(at, place, jars.values()) : Map.of();
    Set<UUID> never = rows.neverAt(place, jars.values());
    return Swaps.suspect(
        said.lines().stream()
            .map(line -> line(line, jars.get(jar(line)).id(), book, since, never))
            .toList());
  }

  private static Line line(
      CountShelf.Line said,
      UUID item,
      Map<UUID, Long> book,
      Map<UUID, Long> since,
      Set<UUID> never) {
    return new Line(
        said.container(),
        said.lot(),
        book.get(item) - since.getOrDefault(item, 0L),
        said.count(),
        null,
        said.cause(),
        never.contains(item));
  }

  private static void requireShort(List<Line> lines) {
    for (int n = 0; n < lines.size(); n++) {
      if (lines.get(n).cause() != null && lines.get(n).difference() >= 0) {
        throw new NothingShort(lines.get(n), "lines[" + n + "].cause");
      }
    }
  }

  /** The items of the lines, their lots locked. */
  private Map<Jar, Item> jars(List<CountShelf.Line> lines) {
    List<String> codes = lines.stream().map(CountShelf.Line::lot).distinct().toList();
    Map<String, Lot> known = lots.locked(codes);
    Map<Jar, Item> packed =
        items.of(codes).stream()
            .filter(item -> !item.isSyrup())
            .collect(
                Collectors.toMap(
                    item -> new Jar(item.lot(), item.container()), Function.identity()));
    Map<Jar, Item> jars = new LinkedHashMap<>();
    for (int n = 0; n < lines.size(); n++) {
      CountShelf.Line line = lines.get(n);
      String path = "lines[" + n + "]";
      Item item = packed.get(jar(line));
      if (item == null) {
        containers.named(line.container(), path + ".container");
        if (!known.containsKey(line.lot())) {
          throw new UnknownLot(line.lot(), path + ".lot");
        }
        throw new NoSuchJars(line.lot(), line.container(), path + ".container");
      }
      if (jars.put(jar(line), item) != null) {
        throw new CountedTwice(line.lot(), line.container(), path);
      }
    }
    return jars;
  }

  private static Jar jar(CountShelf.Line line) {
    return new Jar(line.lot(), line.container());
  }

  private UUID follow(String place, Instant at, List<Line> lines, Map<Jar, Item> jars) {
    Movement.Builder movement = Movement.of(MovementKind.COUNT, at).because("Count difference");
    lines.stream()
        .filter(line -> line.suspectedSwap() == null)
        .forEach(
            line ->
                movement.move(
                    line.cause() == null ? PlaceCode.UNEXPLAINED : line.cause().code(),
                    place,
                    jars.get(new Jar(line.lot(), line.container())).id(),
                    line.difference()));
    return movement.movesNothing() ? null : ledger.post(movement.build());
  }

  private static String whyHeld(Line line, String place) {
    return "Counted at %s: %d × %s too %s, and as many too %s of lot %s. Look for mixed-up labels."
        .formatted(
            place,
            Math.abs(line.difference()),
            line.container(),
            line.difference() > 0 ? "many" : "few",
            line.difference() > 0 ? "few" : "many",
            line.suspectedSwap());
  }

  /**
   * The count an address names.
   *
   * @throws UnknownCount if there is none of that id
   */
  @Transactional
  public StockCount at(UUID id) {
    return rows.find(id).orElseThrow(() -> new UnknownCount(id));
  }
}
