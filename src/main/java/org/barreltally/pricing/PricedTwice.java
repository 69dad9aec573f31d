package org.barreltally.pricing;

import org.barreltally.measure.ColorClass;
import org.barreltally.refusal.Refusal;

/** Two lines, or two deals, are for the same jars. */
public final class PricedTwice extends Refusal {

  /**
   * @param jars what both are for, for example {@code 2 × HP}
   * @param first where in the request the first stands
   * @param field where the second stands
   */
  public PricedTwice(String jars, ColorClass grade, String first, String field) {
    super(
        Kind.RULE,
        "priced-twice",
        "The same has two prices",
        "%s and %s are both for %s %s. Keep one of them."
            .formatted(first, field, jars, grade == null ? "without a grade" : grade.code()),
        field);
  }
}
