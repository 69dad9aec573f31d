package org.barreltally.cost.flow;

import java.math.BigDecimal;
import java.util.UUID;

/**
 * An item of the book as costs see it.
 *
 * @param lot null for jars whose lot nobody wrote down
 * @param container null for syrup in bulk
 * @param gramsEach null for syrup in bulk and jars without a lot
 * @param grade the lot's first, {@code ungraded} where there was none; later grading moves no cost
 * @param season crop year of a lot of one season; null where it has several or none is known
 */
public record Goods(
    UUID item, String lot, String container, BigDecimal gramsEach, String grade, Integer season) {

  /** What so many weigh; nothing for jars without a lot, which are in no making. */
  public BigDecimal grams(long amount) {
    BigDecimal many = BigDecimal.valueOf(amount);
    if (container == null) {
      return many;
    }
    return gramsEach == null ? BigDecimal.ZERO : gramsEach.multiply(many);
  }
}
