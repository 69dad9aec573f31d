package org.barreltally.reconciliation;

import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * opening + made + water + bought + returned = sold + gifts + shares + bulk + sold on consignment +
 * samples + broken + discarded + shrink + unexplained + converted + closing, in mass. Each number
 * comes from the book, so the sum closes; what measuring and counting found and nobody can account
 * for is the unexplained.
 *
 * @param season the year in which the movements are booked
 * @param lot null for all
 * @param unexplainedU standard uncertainty of the unexplained in grams, from the weighings and
 *     readings behind it
 */
public record Balance(int season, String lot, Map<Line, Amount> lines, double unexplainedU) {

  /** Twice the standard uncertainty covers about 95 % (GUM, JCGM 100, 6.3.3). */
  private static final double COVERAGE = 2;

  private static final List<Line> CLOSING = List.of(Line.BARRELS, Line.CONTAINERS, Line.CONSIGNED);

  /**
   * @param standing what stands at own places now
   * @param within movements booked in the year
   * @param after movements to and from own places booked in later years
   */
  static Balance of(
      int season,
      String lot,
      Collection<Sum> standing,
      Collection<Sum> within,
      Collection<Sum> after,
      double unexplainedU) {
    Map<Line, Amount> lines = new EnumMap<>(Line.class);
    for (Line line : Line.values()) {
      lines.put(line, Amount.NONE);
    }
    Amount began = Amount.NONE;
    for (Sum sum : standing) {
      add(lines, sum.line(), Amount.of(sum));
      began = began.plus(Amount.of(sum));
    }
    for (Sum sum : after) {
      if (sum.line().stands()) {
        add(lines, sum.line(), Amount.of(sum).negated());
        began = began.minus(Amount.of(sum));
      }
    }
    for (Sum sum : within) {
      Amount amount = Amount.of(sum);
      if (sum.line().stands()) {
        began = began.minus(amount);
      } else {
        add(lines, sum.line(), sum.line().comesIn() ? amount.negated() : amount);
      }
    }
    add(lines, Line.OPENING, began);
    return new Balance(season, lot, lines, unexplainedU);
  }

  private static void add(Map<Line, Amount> lines, Line line, Amount amount) {
    lines.merge(line, amount, Amount::plus);
  }

  public Amount line(Line line) {
    return lines.get(line);
  }

  /** All that stands at own places at the end. */
  public Amount closing() {
    return CLOSING.stream().map(this::line).reduce(Amount.NONE, Amount::plus);
  }

  /** All that came in and was there, which percents are told of. */
  public Amount cameIn() {
    return lines.entrySet().stream()
        .filter(e -> e.getKey().comesIn())
        .map(Map.Entry::getValue)
        .reduce(Amount.NONE, Amount::plus);
  }

  /** What came in less what went and stands; nothing but rounding in a book that is whole. */
  public double gramsLeft() {
    double out =
        lines.entrySet().stream()
            .filter(e -> !e.getKey().comesIn() && !e.getKey().stands())
            .mapToDouble(e -> e.getValue().grams())
            .sum();
    return cameIn().grams() - out - closing().grams();
  }

  public double unexplainedPercent() {
    double in = cameIn().grams();
    return in == 0 ? 0 : 100 * line(Line.UNEXPLAINED).grams() / in;
  }

  /** Whether the unexplained is more than measuring can explain. */
  public boolean unexplainedSignificant() {
    return Math.abs(line(Line.UNEXPLAINED).grams()) > COVERAGE * unexplainedU
        && Math.round(line(Line.UNEXPLAINED).grams()) != 0;
  }
}
