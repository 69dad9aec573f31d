package org.barreltally.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.barreltally.refusal.InvalidField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The first number is the worked example that GS1 publishes for its check digit. */
class GtinTest {

  @ParameterizedTest
  @CsvSource({"629104150021,3", "0000000,0", "0000001,7", "00000000001,7", "0629104150021,3"})
  void the_check_digit_is_the_published_one(String others, int digit) {
    assertEquals(digit, Gtin.checkDigit(others));
  }

  @Test
  void a_number_is_filled_up_to_fourteen_digits() {
    assertEquals("06291041500213", Gtin.of("6291041500213").digits());
    assertEquals("06291041500213", Gtin.of("06291041500213").digits());
    assertNull(Gtin.of(null));
  }

  @Test
  void a_mistyped_number_is_refused_saying_what_would_check() {
    InvalidField refused = assertThrows(InvalidField.class, () -> Gtin.of("6291041500214"));
    assertEquals("gtin", refused.errors().get(0).field());
    assertTrue(refused.detail().contains("would be 3"), refused.detail());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "3", "62910415002", "6291041500213x", "629104150021300", " 6291041500213"})
  void another_length_or_a_letter_is_refused(String text) {
    InvalidField refused = assertThrows(InvalidField.class, () -> Gtin.of(text));
    assertEquals("gtin", refused.errors().get(0).field());
  }
}
