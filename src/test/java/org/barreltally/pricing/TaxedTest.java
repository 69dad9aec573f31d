package org.barreltally.pricing;

import static org.barreltally.pricing.PriceListFixture.usd;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tax on one line, rounded half up once, and sums of lines as they were rounded. */
class TaxedTest {

  /**
   * On top. The rule: carried to the third decimal, up to a whole cent whenever that is over four
   * (Streamlined Sales and Use Tax Agreement, section 324, from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "15.00, 6, 0.90",
    "9.00, 6.25, 0.56", // 0.5625
    "0.10, 5, 0.01", // 0.005 goes up
    "0.09, 5, 0.00", // 0.0045 is not rounded to 0.005 first
    "25.00, 7, 1.75",
    "33.33, 8.875, 2.96", // 2.9580375
    "16.00, 0, 0.00",
    "-0.10, 5, -0.01", // a return gives back what was charged
    "999999.99, 100, 999999.99",
  })
  void tax_on_top(String amount, String percent, String tax) {
    Taxed taxed = Taxed.onTop(usd(amount), rate(percent));
    assertEquals(usd(tax), taxed.tax());
    assertEquals(usd(amount), taxed.net());
    assertEquals(usd(amount).plus(usd(tax)), taxed.gross());
  }

  /**
   * Within the price. A rate of 20 percent is one sixth of the price, 17.5 percent 7/47, 5 percent
   * 1/21: the VAT fractions of HM Revenue and Customs, VAT Notice 700 (from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "6.00, 20, 1.00",
    "47.00, 17.5, 7.00",
    "21.00, 5, 1.00",
    "9.00, 20, 1.50",
    "0.03, 20, 0.01", // 0.005 goes up
    "10.00, 7, 0.65", // 0.654…
    "10.00, 0, 0.00",
    "-0.03, 20, -0.01",
  })
  void tax_within(String amount, String percent, String tax) {
    Taxed taxed = Taxed.within(usd(amount), rate(percent));
    assertEquals(usd(tax), taxed.tax());
    assertEquals(usd(amount), taxed.gross());
    assertEquals(usd(amount).minus(usd(tax)), taxed.net());
  }

  @Test
  void a_currency_without_cents_is_rounded_to_whole_coins() {
    assertEquals(Money.of("43", "JPY"), Taxed.onTop(Money.of("425", "JPY"), rate("10")).tax());
    assertEquals(Money.of("39", "JPY"), Taxed.within(Money.of("425", "JPY"), rate("10")).tax());
  }

  @Test
  void without_a_rate_there_is_no_tax_and_it_says_so() {
    Taxed taxed = Taxed.unknown(usd("9.00"));
    assertEquals(usd("0.00"), taxed.tax());
    assertNull(taxed.rate());
    assertNull(taxed.percent());
  }

  @Test
  void sums_by_place_and_day_add_the_rounded_lines() {
    LocalDate first = LocalDate.of(2026, 8, 15);
    // three lines of 0.10 at 5 percent are 0.01 each, 0.03 together, where 0.30 at once is 0.02
    List<TaxSums.Line> lines =
        List.of(
            line("VT", first.plusDays(1), "0.10"),
            line("VT", first, "0.10"),
            line("VT", first, "0.10"),
            line("VT", first, "0.10"),
            line("NY", first, "9.00"));
    List<TaxSums.Sum> sums = TaxSums.of(lines);
    assertEquals(3, sums.size());
    assertEquals("NY", sums.get(0).place());
    assertEquals(usd("0.45"), sums.get(0).tax());
    assertEquals(usd("0.03"), sums.get(1).tax());
    assertEquals(usd("0.30"), sums.get(1).net());
    assertEquals(3, sums.get(1).lines());
    assertEquals(first.plusDays(1), sums.get(2).on());
  }

  private static TaxSums.Line line(String place, LocalDate on, String amount) {
    return new TaxSums.Line(place, on, ProductClass.FOOD, Taxed.onTop(usd(amount), rate("5")));
  }

  private static TaxRate rate(String percent) {
    return new TaxRate(
        UUID.fromString("019a1f3a-6a3e-7b52-8f4e-3d1f6a1b2c3d"),
        ProductClass.FOOD,
        "VT",
        new BigDecimal(percent),
        LocalDate.of(2026, 1, 1),
        null,
        null);
  }
}
