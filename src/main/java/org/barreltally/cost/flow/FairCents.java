package org.barreltally.cost.flow;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Shares an amount of money out in proportion to weights, in whole coins, so that the parts sum to
 * the amount. What cutting leaves over goes one coin each to the parts that were cut most (the
 * method of the largest remainder), the earlier one first where they are alike.
 */
public final class FairCents {

  private FairCents() {}

  /**
   * @param total has as many decimals as its currency; may be negative
   * @param weights at least one; where they sum to nothing the first gets all
   * @return a part for each weight, of the same number of decimals
   */
  public static List<BigDecimal> of(BigDecimal total, List<BigDecimal> weights) {
    int scale = total.scale();
    BigDecimal sum = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    if (sum.signum() == 0) {
      return IntStream.range(0, weights.size())
          .mapToObj(i -> i == 0 ? total : BigDecimal.ZERO.setScale(scale))
          .toList();
    }
    BigDecimal coins = total.movePointRight(scale);
    List<BigDecimal> whole = new ArrayList<>();
    List<BigDecimal> cut = new ArrayList<>();
    BigDecimal left = coins;
    for (BigDecimal weight : weights) {
      BigDecimal exact = coins.multiply(weight);
      BigDecimal part = exact.divide(sum, 0, RoundingMode.FLOOR);
      whole.add(part);
      // with a negative sum the remainder is negative too: its size is what was cut
      cut.add(exact.subtract(part.multiply(sum)).abs());
      left = left.subtract(part);
    }
    List<Integer> mostCut =
        IntStream.range(0, weights.size())
            .boxed()
            .sorted(Comparator.comparing(cut::get, Comparator.reverseOrder()))
            .toList();
    for (int n = 0; n < left.intValueExact(); n++) {
      whole.set(mostCut.get(n), whole.get(mostCut.get(n)).add(BigDecimal.ONE));
    }
    return whole.stream().map(part -> part.movePointLeft(scale).setScale(scale)).toList();
  }
}
