package org.barreltally.cost.flow;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/**
 * What is known of packing beside the movements.
 *
 * @param broken jars by run and size, from the pack sheets
 * @param supplies that runs use up
 */
public record Packing(Map<String, Map<String, Integer>> broken, List<Used> supplies) {

  public Packing {
    broken = Map.copyOf(broken);
    supplies = List.copyOf(supplies);
  }

  /**
   * @param kind as costs name it: {@code jar, cap, label, carton, other}
   * @param container null for jars of any size
   * @param perJar how many of it one jar uses; a twelfth of a carton is the exact fraction
   *     numerator over denominator
   */
  public record Used(String code, String kind, String container, int numerator, int denominator) {

    boolean by(String size) {
      return container == null || container.equals(size);
    }

    BigDecimal pieces(long jars) {
      return BigDecimal.valueOf(jars)
          .multiply(BigDecimal.valueOf(numerator))
          .divide(BigDecimal.valueOf(denominator), java.math.MathContext.DECIMAL128);
    }
  }

  int brokenOf(String run, String size) {
    return broken.getOrDefault(run, Map.of()).getOrDefault(size, 0);
  }
}
