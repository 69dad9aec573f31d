package org.barreltally.sales.drawer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import org.barreltally.pricing.Money;
import org.junit.jupiter.api.Test;

/** Worked by hand. */
class CashUpTest {

  @Test
  void a_drawer_should_hold_its_float_and_what_came_in_less_what_went_out() {
    // 150 float + 320 handed over - 45 change - 20 paid for hay = 405
    CashUp up = CashUp.of(usd(150), usd(320), usd(45), usd(20), usd(405), List.of());
    assertEquals(usd(405), up.due());
    assertEquals(usd(0), up.overShort());
    assertEquals(List.of(), up.hints());
  }

  @Test
  void twelve_dollars_short_are_six_times_the_two_dollar_deal() {
    CashUp up =
        CashUp.of(
            usd(100),
            usd(60),
            usd(0),
            usd(0),
            usd(148),
            List.of(Clue.often("the $2 deal", usd(2)), Clue.often("PT at $15", usd(15))));
    assertEquals(usd(-12), up.overShort());
    assertEquals(List.of("equals 6 × the $2 deal"), up.hints());
  }

  @Test
  void the_simplest_explanation_comes_first_and_none_is_forced() {
    List<Clue> clues =
        List.of(
            Clue.often("HP", usd(5)),
            Clue.once("the sale told as card", usd(30)),
            Clue.once("another sale told as card", usd(15)),
            Clue.often("PT", usd(15)));
    CashUp up = CashUp.of(usd(0), usd(100), usd(0), usd(0), usd(130), clues);
    assertEquals(
        List.of("equals 1 × the sale told as card", "equals 2 × PT", "equals 6 × HP"), up.hints());
    CashUp odd = CashUp.of(usd(0), usd(100), usd(0), usd(0), usd(99), clues);
    assertEquals(List.of(), odd.hints());
  }

  @Test
  void nobody_counted_so_nothing_is_over_or_short() {
    CashUp up = CashUp.of(usd(0), usd(100), usd(0), usd(0), null, List.of());
    assertEquals(usd(100), up.due());
    assertNull(up.overShort());
  }

  private static Money usd(int dollars) {
    return Money.of(String.valueOf(dollars), "USD");
  }
}
