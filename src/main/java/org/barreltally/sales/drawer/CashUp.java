package org.barreltally.sales.drawer;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.barreltally.pricing.Money;

/**
 * A drawer cashed up: due = float + cash taken − change given − payouts; over or short = counted −
 * due (common practice). It never touches how many jars were sold.
 *
 * @param due what should be in it
 * @param overShort what was counted less what is due; null if nobody counted
 * @param hints what the difference equals; nothing was adjusted for them
 */
public record CashUp(Money due, Money overShort, List<String> hints) {

  private static final int HINTS_MAX = 6;

  /**
   * @param counted null if nobody counted
   * @param payouts cash that was paid out of it
   */
  public static CashUp of(
      Money cashFloat, Money taken, Money change, Money payouts, Money counted, List<Clue> clues) {
    Money due = cashFloat.plus(taken).minus(change).minus(payouts);
    if (counted == null) {
      return new CashUp(due, null, List.of());
    }
    Money off = counted.minus(due);
    return new CashUp(due, off, hints(off, clues));
  }

  private record Match(Clue clue, int times) {}

  private static List<String> hints(Money off, List<Clue> clues) {
    if (off.signum() == 0) {
      return List.of();
    }
    BigDecimal amount = off.amount().abs();
    List<Match> found = new ArrayList<>();
    for (Clue clue : clues) {
      if (clue.amount().signum() > 0) {
        BigDecimal[] parts = amount.divideAndRemainder(clue.amount().amount());
        if (parts[1].signum() == 0
            && parts[0].compareTo(BigDecimal.valueOf(clue.timesMost())) <= 0) {
          found.add(new Match(clue, parts[0].intValueExact()));
        }
      }
    }
    return found.stream()
        .sorted(Comparator.comparing(Match::times))
        .limit(HINTS_MAX)
        .map(match -> "equals %d × %s".formatted(match.times(), match.clue().what()))
        .toList();
  }
}
