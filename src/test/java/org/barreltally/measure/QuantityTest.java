package org.barreltally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import org.barreltally.refusal.InvalidField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {

  @ParameterizedTest
  @CsvSource({
    "486.5, 486.5",
    "0, 0",
    "-40, -40",
    "0.10, 0.10",
    "123456789012, 123456789012",
    "0.123456789012, 0.123456789012",
    "0.000000000001, 0.000000000001",
    "1e3, 1000",
    "' 7 ', 7"
  })
  void accepts_up_to_twelve_digits_and_keeps_them(String typed, String kept) {
    assertEquals(kept, Quantity.of(typed, Unit.LB).value().toPlainString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1234567890123",
        "0.1234567890123",
        "1.000000000000",
        "1e12",
        "1e400",
        "1e999999999",
        "1e-13",
        "1e-999999999",
        "99999999999999999999999999999999999999999999999999"
      })
  void refuses_more_digits(String typed) {
    TooManyDigits refusal = assertThrows(TooManyDigits.class, () -> Quantity.of(typed, Unit.LB));
    assertEquals("too-many-digits", refusal.code());
    assertEquals("value", refusal.errors().get(0).field());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  ", "ten", "1,5", "66.9 Brix", "NaN", "0x10"})
  void refuses_what_is_no_number(String typed) {
    InvalidField refusal = assertThrows(InvalidField.class, () -> Quantity.of(typed, Unit.LB));
    assertEquals("value", refusal.errors().get(0).field());
  }

  @Test
  void refuses_a_missing_number_or_unit() {
    assertThrows(InvalidField.class, () -> Quantity.of((String) null, Unit.LB));
    assertThrows(InvalidField.class, () -> Quantity.of((BigDecimal) null, Unit.LB));
    InvalidField refusal = assertThrows(InvalidField.class, () -> Quantity.of(1, null));
    assertEquals("unit", refusal.errors().get(0).field());
  }

  /** Factors: NIST SP 811 appendix B and Handbook 44 appendix C, exact by definition. */
  @ParameterizedTest
  @CsvSource({
    "1, lb, g, 453.59237",
    "16, oz, lb, 1",
    "1, oz, g, 28.349523125",
    "1, kg, g, 1000",
    "1, gal, mL, 3785.411784",
    "1, gal, floz, 128",
    "1, gal, pt, 8",
    "1, gal, qt, 4",
    "1, qt, floz, 32",
    "1, pt, mL, 473.176473",
    "1, floz, mL, 29.5735295625",
    "1, L, mL, 1000",
    "212, degF, degC, 100",
    "32, degF, degC, 0",
    "-40, degF, degC, -40",
    "20, degC, degF, 68",
    "66.9, Brix, Brix, 66.9",
    "36, Baume, Baume, 36"
  })
  void converts_exactly(String value, String from, String to, String expected) {
    BigDecimal converted = Quantity.of(value, Unit.of(from)).in(Unit.of(to));
    assertEquals(0, converted.compareTo(new BigDecimal(expected)), converted::toString);
  }

  @Test
  void converts_to_thirty_four_digits_where_the_decimal_does_not_end() {
    assertEquals(
        new BigDecimal("29.44444444444444444444444444444444"),
        Quantity.of(85, Unit.DEGF).in(Unit.DEGC));
    assertEquals(
        new BigDecimal("2.204622621848775807229738013450270"), Quantity.of(1, Unit.KG).in(Unit.LB));
  }

  @ParameterizedTest
  @CsvSource({"lb, gal", "gal, degF", "degC, Brix", "Brix, Baume", "Baume, Brix", "g, mL"})
  void refuses_to_convert_between_different_things_and_names_both(String from, String to) {
    Quantity quantity = Quantity.of(1, Unit.of(from));
    UnitMismatch refusal = assertThrows(UnitMismatch.class, () -> quantity.in(Unit.of(to)));
    assertEquals(Unit.of(from), refusal.given());
    assertEquals(Unit.of(to), refusal.needed());
    assertEquals("unit-mismatch", refusal.code());
  }

  @ParameterizedTest
  @CsvSource({
    "1.005, 2, 1.01",
    "1.004999, 2, 1.00",
    "-1.005, 2, -1.01",
    "2.5, 0, 3",
    "0.285, 2, 0.29",
    "0, 1, 0.0"
  })
  void rounds_half_up(String value, int decimals, String expected) {
    BigDecimal wanted = new BigDecimal(expected);
    assertEquals(wanted, Quantity.of(value, Unit.GAL).to(Unit.GAL, decimals).value());
    assertEquals(wanted, Quantity.rounded(Double.parseDouble(value), Unit.GAL, decimals).value());
  }

  @ParameterizedTest
  @CsvSource({
    "123456789.1234, 3, 123456789.123",
    "1234567891.2349, 3, 1234567891.23",
    "999999999999.4, 3, 999999999999",
    "9999999999.999, 3, 10000000000.0",
    "-1234567891.2349, 3, -1234567891.23"
  })
  void a_computed_value_of_many_digits_has_fewer_decimals(
      double value, int decimals, String expected) {
    assertEquals(new BigDecimal(expected), Quantity.rounded(value, Unit.ML, decimals).value());
  }

  @Test
  void a_computed_value_of_more_than_twelve_digits_before_the_point_is_refused() {
    assertThrows(TooManyDigits.class, () -> Quantity.rounded(1e12, Unit.ML, 3));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void a_computed_value_that_is_not_finite_is_a_defect(double value) {
    assertThrows(IllegalArgumentException.class, () -> Quantity.rounded(value, Unit.G, 1));
  }

  @Test
  void is_equal_by_number_and_unit() {
    assertEquals(Quantity.of("1.0", Unit.LB), Quantity.of("1", Unit.LB));
    assertEquals(Quantity.of("1.0", Unit.LB).hashCode(), Quantity.of("1", Unit.LB).hashCode());
    assertEquals(Quantity.of("0.00", Unit.LB).hashCode(), Quantity.of(0, Unit.LB).hashCode());
    assertNotEquals(Quantity.of("1", Unit.LB), Quantity.of("1", Unit.OZ));
    assertNotEquals(Quantity.of("16", Unit.OZ), Quantity.of("1", Unit.LB));
  }

  @Test
  void says_itself_plainly() {
    assertEquals("486.5 lb", Quantity.of("486.5", Unit.LB).toString());
    assertEquals("100000 mL", Quantity.of("1e5", Unit.ML).toString());
  }
}
