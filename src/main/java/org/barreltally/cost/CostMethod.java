package org.barreltally.cost;

import java.util.Locale;

/** How the cost of goods that are alike is told apart. */
public enum CostMethod {
  /** Each lot carries what was spent on it: the first choice, because every jar has its lot. */
  SPECIFIC_LOT,
  /** All jars of one size and grade cost the same: their mean, reckoned anew whenever some come. */
  MOVING_AVERAGE,
  /** Of one size and grade the jars that came first are taken to go first. */
  FIRST_IN_FIRST_OUT;

  /** {@code specific-lot, moving-average, first-in-first-out}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The method with this code, which the database guarantees to exist. */
  public static CostMethod of(String code) {
    return valueOf(code.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
