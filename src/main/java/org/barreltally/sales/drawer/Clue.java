package org.barreltally.sales.drawer;

import org.barreltally.pricing.Money;

/**
 * Something of an amount that may have happened once or several times and would put a drawer off.
 *
 * @param what in words that follow a number: {@code the deal 2 × PT, $2.00 off}
 * @param amount of one, above zero
 * @param timesMost how often it may have happened
 */
public record Clue(String what, Money amount, int timesMost) {

  private static final int OFTEN = 40;

  public static Clue once(String what, Money amount) {
    return new Clue(what, amount, 1);
  }

  public static Clue often(String what, Money amount) {
    return new Clue(what, amount, OFTEN);
  }
}
