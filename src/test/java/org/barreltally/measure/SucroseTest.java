package org.barreltally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SucroseTest {
  private static final long SEED = 168140;

  /** Source: CRC Handbook of Chemistry and Physics, sucrose at 20 °C, read second-hand. */
  @Test
  void agrees_with_the_handbook_densities_within_three_parts_in_ten_thousand() {
    for (CSVRecord row : TestTable.rows("crc_sucrose_density.csv")) {
      double published = TestTable.number(row, "density");
      double brix = TestTable.number(row, "brix");
      assertEquals(published, Sucrose.density(brix, 20), 0.0003 * published, () -> brix + " °Bx");
    }
  }

  /** Source: water densities at atmospheric pressure as tabulated by CIPM 2001, from memory. */
  @ParameterizedTest
  @CsvSource({"4, 999.975", "20, 998.207", "25, 997.048", "40, 992.215"})
  void agrees_with_the_densities_of_water(double celsius, double published) {
    assertEquals(published, Sucrose.density(0, celsius), 0.01);
  }

  @Test
  void the_inverse_finds_the_strength_again() {
    Random random = new Random(SEED);
    for (int i = 0; i < 20_000; i++) {
      double brix = random.nextDouble() * 70;
      double celsius = random.nextDouble() * 100;
      double back = Sucrose.brixAt(Sucrose.density(brix, celsius), celsius);
      assertEquals(brix, back, 1e-9, () -> "seed " + SEED + ", " + celsius + " °C");
    }
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "0, 100", "70, 0", "70, 100", "70, 20", "0, 20"})
  void the_inverse_holds_at_the_corners(double brix, double celsius) {
    assertEquals(brix, Sucrose.brixAt(Sucrose.density(brix, celsius), celsius), 1e-9);
  }

  @Test
  void density_rises_with_strength_everywhere() {
    for (int celsius = 0; celsius <= 100; celsius += 5) {
      for (int brix = 0; brix < 70; brix++) {
        assertTrue(Sucrose.density(brix + 1, celsius) > Sucrose.density(brix, celsius) + 3);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "-0.1, 20, brix",
    "70.1, 20, brix",
    "NaN, 20, brix",
    "Infinity, 20, brix",
    "66, -0.1, temperature",
    "66, 100.1, temperature",
    "66, NaN, temperature"
  })
  void refuses_what_the_table_does_not_know(double brix, double celsius, String field) {
    OutsideDensityRange refusal =
        assertThrows(OutsideDensityRange.class, () -> Sucrose.density(brix, celsius));
    assertEquals("outside-density-range", refusal.code());
    assertEquals(field, refusal.errors().get(0).field());
    assertEquals(field.equals("brix") ? 70 : 100, refusal.most());
  }

  @Test
  void names_the_value_and_the_range() {
    OutsideDensityRange refusal =
        assertThrows(OutsideDensityRange.class, () -> Sucrose.density(71.5, 20));
    assertEquals(71.5, refusal.value());
    assertTrue(refusal.detail().contains("71.5 °Bx is outside 0 to 70 °Bx"), refusal.detail());
  }

  @ParameterizedTest
  @CsvSource({"990, 20", "1400, 20", "NaN, 20", "1300, 101"})
  void the_inverse_refuses_likewise(double density, double celsius) {
    assertThrows(OutsideDensityRange.class, () -> Sucrose.brixAt(density, celsius));
  }
}
