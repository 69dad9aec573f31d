package org.barreltally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SteamTest {

  private static final double KELVIN = 273.15;

  /** To all nine digits of the release. */
  @Test
  void boils_where_the_release_says() {
    for (CSVRecord row : TestTable.rows("saturation_temperature.csv")) {
      double megapascal = TestTable.number(row, "pressure_mpa");
      double kelvin = TestTable.number(row, "temperature_k");
      assertEquals(kelvin, Steam.boilingKelvin(megapascal), 0.5e-6);
      assertEquals(kelvin - KELVIN, Steam.boilingCelsius(megapascal * 1e6), 0.5e-6);
    }
  }

  /** To all nine digits of the release. */
  @Test
  void has_the_pressure_the_release_says() {
    for (CSVRecord row : TestTable.rows("saturation_pressure.csv")) {
      double megapascal = TestTable.number(row, "pressure_mpa");
      assertEquals(
          megapascal,
          Steam.saturationMPa(TestTable.number(row, "temperature_k")),
          0.5e-8 * megapascal);
    }
  }

  /** Where sap is boiled, the one equation undoes the other (they agree to some 0.01 mK there). */
  @ParameterizedTest
  @ValueSource(doubles = {60_000, 85_000, 98_600, 101_325, 110_000})
  void goes_there_and_back(double pascal) {
    assertEquals(pascal, Steam.pascalAt(Steam.boilingCelsius(pascal)), 0.1);
  }

  /**
   * One standard atmosphere, 1013.25 hPa or 29.92 inHg: 99.974 °C, 211.95 °F (steam tables, from
   * memory).
   */
  @Test
  void boils_at_211_95_under_one_atmosphere() {
    assertEquals(99.974, Steam.boilingCelsius(101_325), 0.0005);
  }

  @ParameterizedTest
  @CsvSource({"0", "-1", "NaN", "23000000"})
  void has_no_answer_where_water_does_not_boil(double pascal) {
    assertThrows(IllegalArgumentException.class, () -> Steam.boilingCelsius(pascal));
  }

  @ParameterizedTest
  @CsvSource({"-1", "NaN", "374"})
  void has_no_pressure_for_ice_or_gas(double celsius) {
    assertThrows(IllegalArgumentException.class, () -> Steam.pascalAt(celsius));
  }
}
