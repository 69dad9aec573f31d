package org.barreltally.cost.flow;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.barreltally.cost.CostMethod;

/**
 * The book walked through to the end of a year, or to a day in it.
 *
 * @param opening what stood when the year began, by pool
 * @param lines of the year
 * @param makings of the year
 * @param end the walk where it ended; it has the lines and makings of all years
 */
public record YearWalk(
    Map<PoolKey, Stood> opening, List<Line> lines, List<Making> makings, Walk end, Spread spread) {

  /** So many stood, and what they cost together. */
  public record Stood(long amount, BigDecimal value) {}

  /**
   * @param book movements booked up to the year, in order
   * @param until last day that counts; null for the whole year
   */
  public static YearWalk of(
      List<Happening> book,
      List<Spent> costs,
      Packing packing,
      CostMethod method,
      int year,
      LocalDate until,
      int scale) {
    Spread spread = Spreading.of(book, costs, packing, year, scale);
    Walk walk = new Walk(method, scale, spread);
    book.stream().filter(each -> each.year() < year).forEach(walk::take);
    Map<PoolKey, Stood> opening = standing(walk);
    int lines = walk.lines().size();
    int makings = walk.makings().size();
    book.stream()
        .filter(each -> each.year() == year)
        .filter(each -> until == null || !each.day().isAfter(until))
        .forEach(walk::take);
    return new YearWalk(
        opening,
        List.copyOf(walk.lines().subList(lines, walk.lines().size())),
        List.copyOf(walk.makings().subList(makings, walk.makings().size())),
        walk,
        spread);
  }

  /** What stands at the end. */
  public Map<PoolKey, Stood> closing() {
    return standing(end);
  }

  private static Map<PoolKey, Stood> standing(Walk walk) {
    Map<PoolKey, Stood> standing = new TreeMap<>();
    walk.pools().forEach((key, pool) -> standing.put(key, new Stood(pool.amount(), pool.value())));
    return standing;
  }
}
