package org.barreltally.cost.flow;

import java.math.BigDecimal;
import java.util.UUID;

/**
 * What one movement did to one pool.
 *
 * @param place own place it went from or came to; null where it is not one
 * @param account outside account for what went ({@link Flow#GONE}); else null
 * @param amount grams or pieces; above zero in the direction of the flow
 * @param value in whole coins, in the direction of the flow
 */
public record Line(
    UUID movement,
    String kind,
    int year,
    PoolKey pool,
    Flow flow,
    String account,
    String place,
    long amount,
    BigDecimal value) {

  /** The directions in which goods and their cost go. */
  public enum Flow {
    /** Came from the evaporator. */
    BOILED,
    /** Came from a supplier. */
    BOUGHT,
    /** Was there when the book began. */
    OPENED,
    /** Came of a making: a run, a top-up. */
    MADE,
    /** Went into a making. */
    USED,
    /** Went out of the book; below zero where it came back. */
    GONE
  }
}
