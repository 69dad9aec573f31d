package org.barreltally.cost.flow;

import java.math.BigDecimal;

/**
 * What a cost adds to goods, with the sum it is a part of, so that it can be followed on paper.
 *
 * @param of what the cost belongs to
 * @param name of that: a season, lot, run, container or supply
 * @param spent altogether
 * @param over how much it is spread: grams (season, lot) or pieces (run), or pieces filled
 *     (container, supply)
 * @param here how much of that these goods are
 * @param value of these goods, in whole coins
 */
public record Contribution(
    Of of, String name, BigDecimal spent, BigDecimal over, BigDecimal here, BigDecimal value) {

  /** What a cost can belong to that makes goods. */
  public enum Of {
    SEASON,
    LOT,
    RUN,
    CONTAINER,
    SUPPLY;

    /** {@code season, lot, run, container, supply}. */
    public String code() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }
}
