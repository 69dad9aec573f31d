package org.barreltally.pricing;

import static org.barreltally.pricing.PriceListFixture.deal;
import static org.barreltally.pricing.PriceListFixture.farm;
import static org.barreltally.pricing.PriceListFixture.line;
import static org.barreltally.pricing.PriceListFixture.list;
import static org.barreltally.pricing.PriceListFixture.usd;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.barreltally.measure.ColorClass;
import org.junit.jupiter.api.Test;

/** Which line prices a jar, and what the owner is warned of. */
class PriceTest {

  @Test
  void a_line_with_the_grade_comes_before_one_without() {
    assertEquals(Optional.of(usd("10.00")), farm().price("HP", ColorClass.GOLDEN));
    assertEquals(Optional.of(usd("9.00")), farm().price("HP", ColorClass.AMBER));
    assertEquals(Optional.empty(), farm().price("GAL", ColorClass.AMBER));
  }

  @Test
  void a_jar_of_unknown_grade_has_the_line_without_one_or_what_all_grades_agree_on() {
    assertEquals(Optional.of(usd("9.00")), farm().price("HP", null));
    PriceList agree =
        list(
            List.of(line("PT", ColorClass.AMBER, "15.00"), line("PT", ColorClass.DARK, "15.00")),
            List.of());
    assertEquals(Optional.of(usd("15.00")), agree.price("PT", null));
    assertEquals(Optional.empty(), agree.price("PT", ColorClass.GOLDEN));
    PriceList differ =
        list(
            List.of(line("PT", ColorClass.AMBER, "15.00"), line("PT", ColorClass.DARK, "14.00")),
            List.of());
    assertEquals(Optional.empty(), differ.price("PT", null));
  }

  @Test
  void deals_that_save_nothing_are_warned_of() {
    List<String> warnings =
        Warnings.of(
            farm(
                deal("HP", null, 2, "16.00"),
                deal("HP", null, 3, "28.00"),
                deal("HP", ColorClass.GOLDEN, 2, "19.00"),
                deal("PT", ColorClass.DARK, 2, "30.00")),
            "USD");
    assertEquals(2, warnings.size(), warnings.toString());
    assertTrue(
        warnings.get(0).startsWith("deals[1]: 3 × HP for 28.00 USD is dearer than 3 singly"),
        warnings.get(0));
    assertTrue(warnings.get(0).contains("27.00 USD"), warnings.get(0));
    assertTrue(warnings.get(1).startsWith("deals[3]: 2 × PT for 30.00 USD costs the same"));
  }

  @Test
  void a_price_of_nothing_and_a_foreign_currency_are_warned_of() {
    List<String> warnings = Warnings.of(list(List.of(line("PT", null, "0")), List.of()), "CAD");
    assertEquals(
        List.of(
            "The list is in USD, the farm counts in CAD; nothing is converted.",
            "lines[0]: PT costs nothing."),
        warnings);
  }
}
