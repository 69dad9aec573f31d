package org.barreltally.cost.flow;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.UUID;
import org.barreltally.cost.flow.Happening.At;
import org.barreltally.cost.flow.Happening.Moved;

/**
 * Spreads costs over goods: a season's by mass over the syrup boiled in it, a lot's by mass over
 * what came of it, a run's by piece over its good jars, and a container's over the good jars of its
 * size, those that broke in the run included.
 *
 * <p>Costs and goods meet in the year in which both are in the book. So a closed year keeps its
 * figures: what is told later of its goods is borne by the year it is booked in.
 */
public final class Spreading {

  /** Goods on which costs of one name can fall. */
  private record Bearer(Happening happening, Moved moved, BigDecimal weight) {}

  private record Key(Contribution.Of of, String name) {}

  private final int asOf;
  private final int scale;
  private final Packing packing;
  private final Map<Key, List<Bearer>> bearers = new LinkedHashMap<>();
  private final Map<UUID, Map<UUID, List<Contribution>>> added = new HashMap<>();
  private final List<Spread.Late> late = new ArrayList<>();
  private final List<Spent> waiting = new ArrayList<>();

  private Spreading(int asOf, int scale, Packing packing) {
    this.asOf = asOf;
    this.scale = scale;
    this.packing = packing;
  }

  /**
   * @param book movements booked up to the year
   * @param asOf the year at whose end it is reckoned; what is booked later does not count
   * @param scale decimals of the currency
   */
  public static Spread of(
      List<Happening> book, List<Spent> costs, Packing packing, int asOf, int scale) {
    Spreading spreading = new Spreading(asOf, scale, packing);
    book.forEach(spreading::note);
    spreading.spread(costs);
    book.forEach(happening -> spreading.pack(happening, costs));
    return new Spread(spreading.added, spreading.late, spreading.waiting);
  }

  private void note(Happening happening) {
    if (happening.takesBack()) {
      return;
    }
    for (Moved moved : happening.moved()) {
      Goods goods = moved.goods();
      if (moved.at() == At.OUTSIDE && moved.amount() < 0 && Walk.isSource(moved.place())) {
        BigDecimal grams = goods.grams(-moved.amount());
        bear(Contribution.Of.LOT, goods.lot(), happening, moved, grams);
        if ("boiled".equals(moved.place()) && goods.season() != null) {
          bear(Contribution.Of.SEASON, goods.season().toString(), happening, moved, grams);
        }
      } else if (isPacked(happening, moved)) {
        bear(
            Contribution.Of.RUN, goods.lot(), happening, moved, BigDecimal.valueOf(moved.amount()));
      }
    }
  }

  private static boolean isPacked(Happening happening, Moved moved) {
    return "canning".equals(happening.kind())
        && moved.at() == At.OWN
        && moved.amount() > 0
        && moved.goods().container() != null;
  }

  private void bear(
      Contribution.Of of, String name, Happening happening, Moved moved, BigDecimal weight) {
    bearers
        .computeIfAbsent(new Key(of, name), key -> new ArrayList<>())
        .add(new Bearer(happening, moved, weight));
  }

  private void spread(List<Spent> costs) {
    Map<Key, TreeMap<Integer, BigDecimal>> sums = new LinkedHashMap<>();
    for (Spent cost : costs) {
      Key key = new Key(cost.of(), cost.name());
      if (cost.pieces() != null || cost.year() > asOf) {
        continue;
      }
      List<Bearer> all = bearers.getOrDefault(key, List.of());
      Integer meets =
          all.stream()
              .map(bearer -> bearer.happening().year())
              .filter(year -> year >= cost.year())
              .min(Integer::compare)
              .orElse(null);
      Integer until =
          cost.takenBackIn() == null || cost.takenBackIn() > asOf ? null : cost.takenBackIn();
      Integer bornIn = meets != null ? meets : all.isEmpty() ? null : Integer.valueOf(cost.year());
      if (until != null && (bornIn == null || until <= bornIn)) {
        continue;
      }
      if (bornIn == null) {
        waiting.add(cost);
      } else if (meets == null) {
        late.add(new Spread.Late(cost, bornIn, cost.amount()));
      } else {
        sums.computeIfAbsent(key, k -> new TreeMap<>())
            .merge(meets, cost.amount(), BigDecimal::add);
      }
      if (until != null) {
        late.add(new Spread.Late(cost, until, cost.amount().negate()));
      }
    }
    sums.forEach((key, years) -> years.forEach((year, sum) -> share(key, year, sum)));
  }

  private void share(Key key, int year, BigDecimal sum) {
    List<Bearer> bearing =
        bearers.get(key).stream().filter(bearer -> bearer.happening().year() == year).toList();
    List<BigDecimal> weights = bearing.stream().map(Bearer::weight).toList();
    BigDecimal over = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    List<BigDecimal> parts = FairCents.of(sum.setScale(scale, RoundingMode.HALF_UP), weights);
    for (int n = 0; n < bearing.size(); n++) {
      Bearer bearer = bearing.get(n);
      add(
          bearer.happening(),
          bearer.moved().goods(),
          new Contribution(key.of(), key.name(), sum, over, bearer.weight(), parts.get(n)));
    }
  }

  /** What containers and their parts cost on the day of a run. */
  private void pack(Happening happening, List<Spent> costs) {
    if (happening.takesBack()) {
      return;
    }
    List<Spent> prices =
        costs.stream()
            .filter(cost -> cost.pieces() != null)
            .filter(cost -> cost.standsIn(happening.year()) && !cost.on().isAfter(happening.day()))
            .toList();
    for (Moved moved : happening.moved()) {
      if (isPacked(happening, moved)) {
        Goods goods = moved.goods();
        long filled = moved.amount() + packing.brokenOf(goods.lot(), goods.container());
        prices(goods.container(), prices)
            .forEach((price, used) -> addPacking(happening, moved, price, used, filled));
      }
    }
  }

  /** The newest price of each part of a size; null where it is the container's own. */
  private Map<Spent, Packing.Used> prices(String size, List<Spent> prices) {
    Map<String, Spent> own = new TreeMap<>();
    Map<String, Spent> ofSupplies = new TreeMap<>();
    for (Spent price : prices) {
      if (price.of() == Contribution.Of.CONTAINER && price.name().equals(size)) {
        own.merge(price.kind(), price, Spreading::newer);
      } else if (price.of() == Contribution.Of.SUPPLY) {
        ofSupplies.merge(price.name(), price, Spreading::newer);
      }
    }
    Map<Spent, Packing.Used> found = new LinkedHashMap<>();
    own.values().forEach(price -> found.put(price, null));
    for (Packing.Used used : packing.supplies()) {
      Spent price = ofSupplies.get(used.code());
      if (used.by(size) && price != null && !own.containsKey(used.kind())) {
        found.put(price, used);
      }
    }
    return found;
  }

  /**
   * Prices come in the order in which they were told, so of two from one day the later one wins.
   */
  private static Spent newer(Spent one, Spent later) {
    return later.on().isBefore(one.on()) ? one : later;
  }

  private void addPacking(
      Happening happening, Moved moved, Spent price, Packing.Used used, long filled) {
    BigDecimal pieces = used == null ? BigDecimal.valueOf(filled) : used.pieces(filled);
    BigDecimal value =
        price
            .amount()
            .multiply(pieces)
            .divide(BigDecimal.valueOf(price.pieces()), scale, RoundingMode.HALF_UP);
    add(
        happening,
        moved.goods(),
        new Contribution(
            price.of(),
            price.name() + " " + price.kind(),
            price.amount(),
            BigDecimal.valueOf(Objects.requireNonNull(price.pieces())),
            pieces,
            value));
  }

  private void add(Happening happening, Goods goods, Contribution contribution) {
    added
        .computeIfAbsent(happening.id(), id -> new HashMap<>())
        .computeIfAbsent(goods.item(), id -> new ArrayList<>())
        .add(contribution);
  }
}
