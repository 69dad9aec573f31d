package org.barreltally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PressureTest {

  /** One atmosphere is 1013.25 hPa, 101.325 kPa and 29.921 inHg (NIST SP 811, appendix B). */
  @ParameterizedTest
  @CsvSource({"1013.25, hPa", "101.325, kPa", "29.9213, inHg"})
  void one_atmosphere_in_every_unit(String value, String unit) {
    assertEquals(101_325, said(value, unit).pascal(), 0.5);
  }

  @Test
  void is_computed_to_a_tenth_of_a_hectopascal() {
    assertEquals("986.1 hPa", Pressure.hPa(98_605).toString());
  }

  @ParameterizedTest
  @CsvSource({"600, hPa", "1100, hPa", "60, kPa", "110, kPa", "17.8, inHg", "32.4, inHg"})
  void the_air_may_have_it(String value, String unit) {
    Pressure said = said(value, unit);
    assertEquals(said, OutsidePressureRange.check(said, "pressure"));
  }

  /** The last two are a unit mistaken, and a gauge that shows what is above the air's. */
  @ParameterizedTest
  @CsvSource({"599, hPa", "1101, hPa", "-990, hPa", "29.92, kPa", "14.7, inHg", "0, kPa"})
  void the_air_never_has_it(String value, String unit) {
    Pressure said = said(value, unit);
    Refusal refused =
        assertThrows(
            OutsidePressureRange.class, () -> OutsidePressureRange.check(said, "pressure"));
    assertEquals("outside-pressure-range", refused.code());
    assertEquals("pressure", refused.errors().get(0).field());
  }

  @Test
  void needs_number_and_unit_and_no_more_digits_than_any_instrument_gives() {
    assertThrows(InvalidField.class, () -> new Pressure(null, PressureUnit.HPA));
    assertThrows(InvalidField.class, () -> new Pressure(BigDecimal.ONE, null));
    assertThrows(InvalidField.class, () -> PressureUnit.of("psi"));
    assertThrows(InvalidField.class, () -> PressureUnit.of(null));
    assertThrows(TooManyDigits.class, () -> said("1013.2500000001", "hPa"));
    assertThrows(TooManyDigits.class, () -> said("1e400", "hPa"));
  }

  private static Pressure said(String value, String unit) {
    return new Pressure(new BigDecimal(value), PressureUnit.of(unit));
  }
}
