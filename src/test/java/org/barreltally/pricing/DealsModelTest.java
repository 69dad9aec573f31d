package org.barreltally.pricing;

import static org.barreltally.pricing.PriceListFixture.list;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.barreltally.measure.ColorClass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Random baskets against a model that tries every way to take jars singly or in deals. */
class DealsModelTest {

  private static final int BASKETS = 400;
  private static final List<ColorClass> GRADES =
      Arrays.asList(ColorClass.GOLDEN, ColorClass.AMBER, ColorClass.DARK, null);

  @ParameterizedTest
  @ValueSource(longs = {20260820, 1, 77_041, 90_210})
  void the_total_is_the_least_of_all_ways_and_the_lines_bear_it_fairly(long seed) {
    Random random = new Random(seed);
    int saved = 0;
    for (int i = 0; i < BASKETS; i++) {
      PriceList list = anyList(random);
      List<BasketLine> basket = anyBasket(random);
      Charged charged = Deals.of(list).apply(basket);
      String about = "seed " + seed + ", basket " + i + ": " + basket + " of " + list;
      assertEquals(least(list, basket), coins(charged.total()), about);
      requireFair(charged, list, basket, about);
      requireSameWhateverTheOrder(charged, list, basket, random, about);
      saved += charged.saved().signum();
    }
    assertTrue(saved > BASKETS / 4, "baskets with a deal: " + saved);
  }

  private static PriceList anyList(Random random) {
    List<PriceLine> lines = new ArrayList<>();
    List<Deal> deals = new ArrayList<>();
    for (String container : List.of("HP", "PT")) {
      for (ColorClass grade : GRADES) {
        if (grade == null || random.nextBoolean()) {
          lines.add(
              new PriceLine(
                  container, grade, dollars(1 + random.nextInt(2000)), ProductClass.FOOD));
        }
      }
      for (int d = random.nextInt(4); d > 0; d--) {
        ColorClass grade = GRADES.get(random.nextInt(GRADES.size()));
        int count = 2 + random.nextInt(4);
        if (deals.stream()
            .noneMatch(
                x -> x.container().equals(container) && x.grade() == grade && x.count() == count)) {
          deals.add(new Deal(container, grade, count, dollars(random.nextInt(700 * count))));
        }
      }
    }
    return list(lines, deals);
  }

  private static List<BasketLine> anyBasket(Random random) {
    List<BasketLine> basket = new ArrayList<>();
    int jars = 1 + random.nextInt(9);
    while (jars > 0) {
      int count = 1 + random.nextInt(Math.min(jars, 4));
      boolean agreed = random.nextInt(8) == 0;
      basket.add(
          new BasketLine(
              random.nextInt(3) == 0 ? "PT" : "HP",
              GRADES.get(random.nextInt(GRADES.size())),
              count,
              agreed ? dollars(random.nextInt(1500)) : null));
      jars -= count;
    }
    return basket;
  }

  private static void requireFair(
      Charged charged, PriceList list, List<BasketLine> basket, String about) {
    long sum = 0;
    long singly = 0;
    for (int i = 0; i < basket.size(); i++) {
      BasketLine line = basket.get(i);
      long amount = coins(charged.lines().get(i).amount());
      long single = line.count() * coins(charged.lines().get(i).each());
      boolean could =
          line.each() == null
              && list.deals().stream().anyMatch(d -> d.container().equals(line.container()));
      assertTrue(amount >= 0 && amount <= single, about + " line " + i + " costs " + amount);
      assertTrue(could || amount == single, about + " line " + i + " has no deal");
      sum += amount;
      singly += single;
      for (int j = 0; j < i; j++) {
        BasketLine other = basket.get(j);
        if (line.each() == null
            && other.each() == null
            && other.container().equals(line.container())
            && other.grade() == line.grade()) {
          // amount / count is the same for both but for less than a coin on each line
          long gap = amount * other.count() - coins(charged.lines().get(j).amount()) * line.count();
          assertTrue(
              Math.abs(gap) < line.count() + other.count(), about + " lines " + i + ", " + j);
        }
      }
    }
    assertEquals(coins(charged.total()), sum, about);
    assertEquals(coins(charged.saved()), singly - sum, about);
  }

  private static void requireSameWhateverTheOrder(
      Charged charged, PriceList list, List<BasketLine> basket, Random random, String about) {
    List<BasketLine> shuffled = new ArrayList<>();
    for (BasketLine line : basket) {
      for (int i = 0; i < line.count(); i++) {
        shuffled.add(new BasketLine(line.container(), line.grade(), 1, line.each()));
      }
    }
    Collections.shuffle(shuffled, random);
    assertEquals(charged.total(), Deals.of(list).apply(shuffled).total(), about);
  }

  /** Tries every way, size by size. */
  private static long least(PriceList list, List<BasketLine> basket) {
    long agreed = 0;
    Map<String, int[]> jars = new HashMap<>();
    for (BasketLine line : basket) {
      if (line.each() != null) {
        agreed += line.count() * coins(line.each());
      } else {
        jars.computeIfAbsent(line.container(), c -> new int[GRADES.size()])[
                GRADES.indexOf(line.grade())] +=
            line.count();
      }
    }
    long sum = agreed;
    for (Map.Entry<String, int[]> size : jars.entrySet()) {
      sum += cheapest(list, size.getKey(), size.getValue(), new HashMap<>());
    }
    return sum;
  }

  private static long cheapest(
      PriceList list, String container, int[] left, Map<String, Long> seen) {
    String key = Arrays.toString(left);
    if (seen.containsKey(key)) {
      return seen.get(key);
    }
    long best = Arrays.stream(left).sum() == 0 ? 0 : Long.MAX_VALUE;
    for (int g = 0; g < left.length; g++) {
      if (left[g] > 0) {
        left[g]--;
        long single = coins(list.price(container, GRADES.get(g)).orElseThrow());
        best = Math.min(best, single + cheapest(list, container, left, seen));
        left[g]++;
      }
    }
    for (Deal deal : list.deals()) {
      if (deal.container().equals(container)) {
        best = Math.min(best, withDeal(list, deal, left, 0, deal.count(), seen));
      }
    }
    seen.put(key, best);
    return best;
  }

  /** The least when a deal takes {@code wanted} more jars of the grades from {@code from} on. */
  private static long withDeal(
      PriceList list, Deal deal, int[] left, int from, int wanted, Map<String, Long> seen) {
    if (wanted == 0) {
      return coins(deal.price()) + cheapest(list, deal.container(), left, seen);
    }
    long best = Long.MAX_VALUE;
    for (int g = from; g < left.length; g++) {
      boolean fits = deal.grade() == null || deal.grade() == GRADES.get(g);
      if (fits && left[g] > 0) {
        left[g]--;
        best = Math.min(best, withDeal(list, deal, left, g, wanted - 1, seen));
        left[g]++;
      }
    }
    return best;
  }

  private static Money dollars(int cents) {
    return new Money(BigDecimal.valueOf(cents, 2), "USD");
  }

  private static long coins(Money money) {
    return money.amount().unscaledValue().longValueExact();
  }
}
