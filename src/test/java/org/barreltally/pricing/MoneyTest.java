package org.barreltally.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import org.barreltally.refusal.InvalidField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Decimals by currency: ISO 4217 (USD and EUR 2, JPY 0, BHD 3). */
class MoneyTest {

  @ParameterizedTest
  @CsvSource({
    "28, USD, 28.00",
    "0.5, EUR, 0.50",
    "-3.5, USD, -3.50",
    "1250, JPY, 1250",
    "1.5, BHD, 1.500",
    "2.500000, USD, 2.50"
  })
  void it_has_the_decimals_of_its_currency(String amount, String currency, String expected) {
    assertEquals(expected + " " + currency, Money.of(amount, currency).toString());
  }

  @ParameterizedTest
  @CsvSource({
    "1.005, USD, 1.01",
    "1.0049, USD, 1.00",
    "-1.005, USD, -1.01",
    "0.5, JPY, 1",
    "0.49, JPY, 0",
    "1.0005, BHD, 1.001"
  })
  void a_computed_amount_is_rounded_half_up(String amount, String currency, String expected) {
    assertEquals(Money.of(expected, currency), Money.rounded(new BigDecimal(amount), currency));
  }

  @ParameterizedTest
  @CsvSource({
    "1.005, USD, amount",
    "1.5, JPY, amount",
    "1000000000000, USD, amount",
    "1, usd, currency",
    "1, ZZZ, currency",
    "1, XAU, currency",
    "1, , currency"
  })
  void what_is_no_amount_is_refused_with_its_field(String amount, String currency, String field) {
    InvalidField refusal = assertThrows(InvalidField.class, () -> Money.of(amount, currency));
    assertEquals(field, refusal.errors().get(0).field());
  }

  @Test
  void sums_and_multiples_are_exact_and_round_once() {
    Money price = Money.of("2.15", "USD");
    assertEquals(Money.of("952.45", "USD"), price.times(new BigDecimal("443")));
    assertEquals(Money.of("3.00", "USD"), price.plus(Money.of("0.85", "USD")));
    assertEquals(Money.of("-0.85", "USD"), price.minus(Money.of("3.00", "USD")));
  }

  @Test
  void two_currencies_are_never_put_together() {
    Money dollars = Money.of("1", "USD");
    Money euros = Money.of("1", "EUR");
    assertThrows(CurrencyMismatch.class, () -> dollars.plus(euros));
    assertThrows(CurrencyMismatch.class, () -> dollars.minus(euros));
  }
}
