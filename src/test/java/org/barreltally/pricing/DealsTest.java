package org.barreltally.pricing;

import static org.barreltally.pricing.PriceListFixture.amounts;
import static org.barreltally.pricing.PriceListFixture.deal;
import static org.barreltally.pricing.PriceListFixture.farm;
import static org.barreltally.pricing.PriceListFixture.line;
import static org.barreltally.pricing.PriceListFixture.list;
import static org.barreltally.pricing.PriceListFixture.usd;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.barreltally.measure.ColorClass;
import org.barreltally.refusal.InvalidField;
import org.junit.jupiter.api.Test;

/** Deals worked out by hand at half-pint $9 (golden $10), pint $15, quart $25. */
class DealsTest {

  private static final ColorClass GOLDEN = ColorClass.GOLDEN;
  private static final ColorClass AMBER = ColorClass.AMBER;
  private static final ColorClass DARK = ColorClass.DARK;
  private static final Deal TWO = deal("HP", null, 2, "16.00");

  @Test
  void without_deals_every_line_costs_its_jars_singly() {
    Charged charged =
        farm(TWO).charge(List.of(jars("HP", AMBER, 3), jars("HP", GOLDEN, 1), jars("QT", null, 2)));
    assertEquals(List.of("27.00", "10.00", "50.00"), amounts(charged));
    assertEquals(usd("87.00"), charged.total());
    assertEquals(usd("0.00"), charged.saved());
  }

  @Test
  void a_deal_goes_as_often_as_it_can_and_the_rest_is_single() {
    // 5 half-pints: 16 + 16 + 9
    Charged charged = Deals.of(farm(TWO)).apply(List.of(jars("HP", AMBER, 5)));
    assertEquals(usd("41.00"), charged.total());
    assertEquals(usd("4.00"), charged.saved());
    assertEquals(List.of(new Charged.Used(TWO, 2)), charged.deals());
  }

  @Test
  void jars_of_two_lines_and_grades_make_a_deal_and_the_dearest_go_first() {
    // golden 10 with one amber 9 for 16, the other amber singly: 25, not 10 + 16 = 26
    Charged charged =
        Deals.of(farm(TWO)).apply(List.of(jars("HP", AMBER, 2), jars("HP", GOLDEN, 1)));
    assertEquals(usd("25.00"), charged.total());
    // the deal is borne 9 : 10: amber 9 + 16 × 9/19 = 16.578…, golden 16 × 10/19 = 8.421…
    assertEquals(List.of("16.58", "8.42"), amounts(charged));
  }

  @Test
  void jars_of_one_grade_bear_the_same_whatever_their_line() {
    // three half-pints on two lines cost 16 + 9 = 25: a third of it is 8.333…
    Charged charged =
        Deals.of(farm(TWO)).apply(List.of(jars("HP", AMBER, 1), jars("HP", AMBER, 2)));
    assertEquals(List.of("8.33", "16.67"), amounts(charged));
  }

  @Test
  void grades_of_one_price_bear_a_mixed_deal_alike() {
    Charged charged = Deals.of(farm(TWO)).apply(List.of(jars("HP", AMBER, 2), jars("HP", DARK, 1)));
    assertEquals(List.of("16.67", "8.33"), amounts(charged));
  }

  @Test
  void the_cent_left_over_goes_to_the_line_cut_most_then_the_dearer_then_the_first() {
    Deal odd = deal("HP", null, 2, "16.01");
    Charged equal = Deals.of(farm(odd)).apply(List.of(jars("HP", AMBER, 1), jars("HP", DARK, 1)));
    assertEquals(List.of("8.01", "8.00"), amounts(equal));
    // 4 : 12 of 0.02: both cut to a half coin, the dearer bears it
    PriceList dear =
        list(
            List.of(line("HP", AMBER, "4.00"), line("HP", GOLDEN, "12.00")),
            List.of(deal("HP", null, 2, "0.02")));
    Charged dearer = Deals.of(dear).apply(List.of(jars("HP", AMBER, 1), jars("HP", GOLDEN, 1)));
    assertEquals(List.of("0.00", "0.02"), amounts(dearer));
  }

  @Test
  void several_deals_are_mixed_for_the_least_total() {
    // 2 for 16, 3 for 22: four are 16 + 16 = 32 (22 + 9 = 31 is less); five are 22 + 16 = 38
    Deal three = deal("HP", null, 3, "22.00");
    Deals deals = Deals.of(farm(TWO, three));
    assertEquals(usd("31.00"), deals.apply(List.of(jars("HP", AMBER, 4))).total());
    Charged five = deals.apply(List.of(jars("HP", AMBER, 5)));
    assertEquals(usd("38.00"), five.total());
    assertEquals(List.of(new Charged.Used(TWO, 1), new Charged.Used(three, 1)), five.deals());
  }

  @Test
  void a_deal_of_a_grade_takes_only_that_grade() {
    Deal golden = deal("HP", GOLDEN, 2, "17.00");
    Charged charged =
        Deals.of(farm(golden)).apply(List.of(jars("HP", GOLDEN, 1), jars("HP", AMBER, 1)));
    assertEquals(usd("19.00"), charged.total());
    assertEquals(
        usd("17.00"), Deals.of(farm(golden)).apply(List.of(jars("HP", GOLDEN, 2))).total());
  }

  @Test
  void jars_of_unknown_grade_take_part_in_deals_for_any_grade_alone() {
    Deals deals = Deals.of(farm(TWO, deal("HP", AMBER, 2, "12.00")));
    assertEquals(usd("16.00"), deals.apply(List.of(jars("HP", null, 2))).total());
  }

  @Test
  void a_deal_dearer_than_its_jars_is_never_charged() {
    Charged charged =
        Deals.of(farm(deal("HP", null, 2, "19.00"))).apply(List.of(jars("HP", AMBER, 2)));
    assertEquals(usd("18.00"), charged.total());
    assertTrue(charged.deals().isEmpty());
  }

  @Test
  void a_deal_that_saves_nothing_is_left_out() {
    Charged charged =
        Deals.of(farm(deal("HP", null, 2, "18.00"))).apply(List.of(jars("HP", AMBER, 2)));
    assertTrue(charged.deals().isEmpty());
  }

  @Test
  void jars_at_an_agreed_price_take_no_part() {
    Charged charged =
        Deals.of(farm(TWO))
            .apply(
                List.of(
                    new BasketLine("HP", AMBER, 1, usd("5.00")),
                    jars("HP", AMBER, 2),
                    jars("PT", null, 1)));
    assertEquals(List.of("5.00", "16.00", "15.00"), amounts(charged));
  }

  @Test
  void the_table_of_a_busy_day_adds_up() {
    // pints 2 for 28, half-pints 2 for 16: 3 pints 43, 7 half-pints (2 golden) 3 × 16 + 9 = 57,
    // quart 25
    Deals deals = Deals.of(farm(TWO, deal("PT", null, 2, "28.00")));
    Charged charged =
        deals.apply(
            List.of(
                jars("PT", DARK, 3),
                jars("HP", GOLDEN, 2),
                jars("HP", DARK, 5),
                jars("QT", DARK, 1)));
    assertEquals(usd("125.00"), charged.total());
    // singly 45 + 20 + 45 + 25
    assertEquals(usd("10.00"), charged.saved());
  }

  @Test
  void a_line_of_no_jars_costs_nothing() {
    assertEquals(usd("0.00"), Deals.of(farm(TWO)).apply(List.of(jars("HP", AMBER, 0))).total());
    assertEquals(usd("0.00"), Deals.of(farm(TWO)).apply(List.of()).total());
  }

  @Test
  void a_price_that_is_not_on_the_list_is_refused_by_line() {
    NotOnPriceList refused =
        assertThrows(
            NotOnPriceList.class,
            () -> Deals.of(farm()).apply(List.of(jars("QT", AMBER, 1), jars("GAL", AMBER, 1))));
    assertEquals("lines[1].container", refused.errors().get(0).field());
  }

  @Test
  void an_agreed_price_of_another_currency_is_refused_by_line() {
    CurrencyMismatch refused =
        assertThrows(
            CurrencyMismatch.class,
            () ->
                Deals.of(farm())
                    .apply(List.of(new BasketLine("HP", AMBER, 1, Money.of("5.00", "CAD")))));
    assertEquals("lines[0].price.currency", refused.errors().get(0).field());
  }

  @Test
  void baskets_beyond_reason_are_refused_only_where_a_deal_could_take_part() {
    Deals deals = Deals.of(farm(TWO, deal("HP", AMBER, 5, "36.00")));
    assertEquals(usd("36000.00"), deals.apply(List.of(jars("HP", AMBER, Deals.MOST_JARS))).total());
    assertThrows(
        InvalidField.class, () -> deals.apply(List.of(jars("HP", AMBER, Deals.MOST_JARS + 1))));
    assertEquals(usd("2500000.00"), deals.apply(List.of(jars("QT", AMBER, 100_000))).total());
  }

  @Test
  void a_list_of_many_deals_and_a_large_basket_still_adds_up() {
    Deal[] many =
        IntStream.rangeClosed(2, 40)
            .mapToObj(n -> deal("HP", n % 2 == 0 ? null : AMBER, n, (n * 9 - n / 2) + ".00"))
            .toArray(Deal[]::new);
    Charged charged =
        Deals.of(farm(many)).apply(List.of(jars("HP", AMBER, 1200), jars("HP", GOLDEN, 700)));
    Money sum = charged.lines().stream().map(Charged.Line::amount).reduce(usd("0.00"), Money::plus);
    assertEquals(charged.total(), sum);
    assertTrue(charged.saved().signum() > 0);
  }

  private static BasketLine jars(String container, ColorClass grade, int count) {
    return BasketLine.of(container, grade, count);
  }
}
