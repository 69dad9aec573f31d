package org.barreltally.cost.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import org.barreltally.cost.CostMethod;
import org.barreltally.cost.flow.Happening.At;
import org.barreltally.cost.flow.Happening.Moved;
import org.barreltally.cost.flow.Line.Flow;
import org.junit.jupiter.api.Test;

/**
 * Random books of fillings, runs with heels, sales, returns, breakage and tables: whatever the
 * method, opening and what was added are what went and what stands, to the cent, in every pool and
 * over all of them.
 */
class WalkTest {

  private static final LocalDate FIRST = LocalDate.of(2024, 3, 1);

  /** Makes a book and remembers what stands where, so that nothing goes that is not there. */
  private static final class Book {
    private final Random random;
    private final List<Happening> happenings = new ArrayList<>();
    private final List<Goods> bulk = new ArrayList<>();
    private final List<Goods> jars = new ArrayList<>();
    private final Map<UUID, Long> stands = new java.util.HashMap<>();
    private final Map<UUID, Long> sold = new java.util.HashMap<>();
    private int lots;

    private Book(long seed) {
      this.random = new Random(seed);
    }

    private int yearOf(int step) {
      return 2024 + step / 40;
    }

    private void add(int step, String kind, Moved... moved) {
      happenings.add(
          new Happening(
              UUID.randomUUID(), kind, yearOf(step), FIRST.plusDays(step), false, List.of(moved)));
    }

    private void step(int step) {
      switch (random.nextInt(6)) {
        case 0 -> fill(step);
        case 1 -> run(step);
        case 2 -> gone(step, "customer", "sale");
        case 3 -> gone(step, "broken", "write-off");
        case 4 -> returned(step);
        default -> carried(step);
      }
    }

    private void fill(int step) {
      Goods barrel = goods("S" + lots++, null, yearOf(step));
      long grams = 20_000 + random.nextInt(180_000);
      bulk.add(barrel);
      stands.put(barrel.item(), grams);
      add(step, "filling", out(barrel, "boiled", -grams), own(barrel, "barrel-room", grams));
    }

    private Goods goods(String lot, String container, Integer season) {
      String grade = random.nextBoolean() ? "amber" : "dark";
      BigDecimal each =
          container == null ? null : new BigDecimal(container.equals("PT") ? 628 : 314);
      return new Goods(UUID.randomUUID(), lot, container, each, grade, season);
    }

    private void run(int step) {
      List<Goods> full = bulk.stream().filter(b -> stands.get(b.item()) > 2000).toList();
      if (full.isEmpty()) {
        fill(step);
        return;
      }
      String lot = "P" + lots++;
      Goods syrup = goods(lot, null, null);
      List<Moved> moved = new ArrayList<>();
      long in = 0;
      for (Goods parent : full.subList(0, Math.min(full.size(), 1 + random.nextInt(3)))) {
        long grams = 1 + random.nextLong(stands.get(parent.item()));
        stands.merge(parent.item(), -grams, Long::sum);
        in += grams;
        moved.add(own(parent, "barrel-room", -grams));
        moved.add(new Moved(parent, "blending", At.MAKING, grams));
      }
      long left = in;
      for (String size : List.of("PT", "HP")) {
        long pieces = left / (size.equals("PT") ? 1256 : 628);
        if (pieces > 0) {
          Goods packed = goods(lot, size, null);
          jars.add(packed);
          stands.put(packed.item(), pieces);
          left -= packed.grams(pieces).longValue();
          moved.add(own(packed, "cool-room", pieces));
          moved.add(new Moved(packed, "packing", At.MAKING, -pieces));
        }
      }
      long heel = left / 3;
      if (heel > 0) {
        bulk.add(syrup);
        stands.put(syrup.item(), heel);
        moved.add(own(syrup, "barrel-room", heel));
        moved.add(out(syrup, "filter", left - heel));
        moved.add(new Moved(syrup, "blending", At.MAKING, -left));
      }
      add(step, "canning", moved.toArray(Moved[]::new));
    }

    private void gone(int step, String account, String kind) {
      List<Goods> some = jars.stream().filter(j -> stands.get(j.item()) > 0).toList();
      if (!some.isEmpty()) {
        Goods goods = some.get(random.nextInt(some.size()));
        long pieces = 1 + random.nextLong(stands.get(goods.item()));
        stands.merge(goods.item(), -pieces, Long::sum);
        if (account.equals("customer")) {
          sold.merge(goods.item(), pieces, Long::sum);
        }
        add(step, kind, own(goods, "cool-room", -pieces), out(goods, account, pieces));
      }
    }

    private void returned(int step) {
      List<Goods> some = jars.stream().filter(j -> sold.getOrDefault(j.item(), 0L) > 0).toList();
      if (!some.isEmpty()) {
        Goods goods = some.get(random.nextInt(some.size()));
        long pieces = 1 + random.nextLong(sold.get(goods.item()));
        sold.merge(goods.item(), -pieces, Long::sum);
        stands.merge(goods.item(), pieces, Long::sum);
        add(step, "sale-return", out(goods, "customer", -pieces), own(goods, "cool-room", pieces));
      }
    }

    private void carried(int step) {
      jars.stream()
          .filter(j -> stands.get(j.item()) > 0)
          .findFirst()
          .ifPresent(j -> add(step, "pack-out", own(j, "cool-room", -1), own(j, "fair", 1)));
    }

    private static Moved own(Goods goods, String place, long amount) {
      return new Moved(goods, place, At.OWN, amount);
    }

    private static Moved out(Goods goods, String place, long amount) {
      return new Moved(goods, place, At.OUTSIDE, amount);
    }
  }

  @Test
  void what_came_is_what_went_and_what_stands_by_every_method() {
    Long given = Long.getLong("barreltally.seed");
    long seed = given == null ? new Random().nextLong() : given;
    System.out.println("Seed of walks: -Dbarreltally.seed=" + seed);
    for (int play = 0; play < 40; play++) {
      Book book = new Book(seed + play);
      for (int step = 0; step < 120; step++) {
        book.step(step);
      }
      List<Spent> costs = costs(book);
      BigDecimal all = null;
      for (CostMethod method : CostMethod.values()) {
        BigDecimal added = years(book, costs, method, "seed " + seed + " play " + play);
        all = all == null ? added : all;
        assertEquals(all, added, "the method adds nothing, seed " + seed);
      }
    }
  }

  private static List<Spent> costs(Book book) {
    List<Spent> costs = new ArrayList<>();
    for (int year = 2024; year <= 2026; year++) {
      costs.add(spent(Contribution.Of.SEASON, "" + year, "fuel", year, book, null));
      costs.add(spent(Contribution.Of.SEASON, "" + year, "labour", year, book, null));
    }
    costs.add(spent(Contribution.Of.CONTAINER, "PT", "jar", 2024, book, 100));
    costs.add(spent(Contribution.Of.SUPPLY, "CARTON", "carton", 2024, book, 7));
    for (Goods jar : book.jars.subList(0, Math.min(4, book.jars.size()))) {
      costs.add(spent(Contribution.Of.RUN, jar.lot(), "labour", 2024, book, null));
    }
    return costs;
  }

  private static Spent spent(
      Contribution.Of of, String name, String kind, int year, Book book, Integer pieces) {
    BigDecimal amount = BigDecimal.valueOf(1 + book.random.nextInt(90_000), 2);
    return new Spent(
        UUID.randomUUID(), of, name, kind, LocalDate.of(year, 1, 1), amount, pieces, year, null);
  }

  /** Checks each year, and that it begins with what the one before closed with; says what came. */
  private static BigDecimal years(Book book, List<Spent> costs, CostMethod method, String seed) {
    Packing packing =
        new Packing(Map.of(), List.of(new Packing.Used("CARTON", "carton", null, 1, 12)));
    BigDecimal before = new BigDecimal("0.00");
    BigDecimal added = before;
    for (int year = 2024; year <= 2026; year++) {
      int asOf = year;
      List<Happening> known = book.happenings.stream().filter(each -> each.year() <= asOf).toList();
      YearWalk walk = YearWalk.of(known, costs, packing, method, year, null, 2);
      BigDecimal opening = sum(walk.opening().values().stream().map(YearWalk.Stood::value));
      BigDecimal closing = walk.end().value();
      assertEquals(before, opening, seed);
      BigDecimal in =
          flow(walk, Flow.BOILED).add(flow(walk, Flow.MADE)).subtract(flow(walk, Flow.USED));
      assertEquals(opening.add(in), flow(walk, Flow.GONE).add(closing), seed);
      for (PoolKey key : walk.closing().keySet()) {
        whole(walk, key, seed);
      }
      assertTrue(walk.end().pools().values().stream().allMatch(pool -> pool.amount() >= 0), seed);
      assertEquals(
          standing(book, asOf),
          walk.closing().values().stream().mapToLong(YearWalk.Stood::amount).sum(),
          seed);
      before = closing;
      added = added.add(in);
    }
    return added;
  }

  /** Pieces and grams that the movements left at own places, summed up without pools. */
  private static long standing(Book book, int asOf) {
    return book.happenings.stream()
        .filter(each -> each.year() <= asOf)
        .flatMap(each -> each.moved().stream())
        .filter(moved -> moved.at() == At.OWN)
        .mapToLong(Moved::amount)
        .sum();
  }

  private static void whole(YearWalk walk, PoolKey key, String seed) {
    BigDecimal value =
        walk.opening().containsKey(key) ? walk.opening().get(key).value() : new BigDecimal("0.00");
    for (Line line : walk.lines()) {
      if (line.pool().equals(key)) {
        boolean out = line.flow() == Flow.GONE || line.flow() == Flow.USED;
        value = out ? value.subtract(line.value()) : value.add(line.value());
      }
    }
    assertEquals(walk.closing().get(key).value(), value, seed + " " + key);
  }

  private static BigDecimal flow(YearWalk walk, Flow flow) {
    return sum(walk.lines().stream().filter(line -> line.flow() == flow).map(Line::value));
  }

  private static BigDecimal sum(java.util.stream.Stream<BigDecimal> values) {
    return values.reduce(new BigDecimal("0.00"), BigDecimal::add);
  }
}
