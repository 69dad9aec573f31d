package org.barreltally.people.internal;

import com.nulabinc.zxcvbn.Zxcvbn;
import java.util.ArrayList;
import java.util.List;

/**
 * How soon a password would be guessed by somebody who tries common ones, words, names, dates,
 * sequences and patterns of keys before anything else (D. L. Wheeler, zxcvbn, USENIX Security
 * 2016).
 */
public final class Guessing {

  /** Of 0 to 4; from 3 on it takes more than 10^8 guesses. */
  private static final int SCORE_MIN = 3;

  /** What follows makes it only better, and would take long to look at. */
  private static final int LOOKED_AT_MAX = 64;

  /** What anybody would try at a tool of this name and trade. */
  private static final List<String> OF_THE_TRADE =
      List.of(
          "barreltally",
          "maplesyrup",
          "maple syrup",
          "maple",
          "syrup",
          "sugarhouse",
          "sugarbush",
          "sugarmaker",
          "boiling");

  private Guessing() {}

  /**
   * Whether it is too easy.
   *
   * @param known what somebody who knows the person would try first: their names
   */
  public static boolean isEasy(String password, List<String> known) {
    int end = Math.min(LOOKED_AT_MAX, password.length());
    List<String> tried = new ArrayList<>(known);
    tried.addAll(OF_THE_TRADE);
    return new Zxcvbn().measure(password.substring(0, end), tried).getScore() < SCORE_MIN;
  }
}
