package org.barreltally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SyrupTest {
  private static final double GALLON = 3785.411784;
  private static final double POUND = 453.59237;
  private static final double CELSIUS_185F = 85;
  private static final long SEED = 52_5961;

  /**
   * Source: NBS Circular 440 (1942) as reprinted in Chen (1992); from 66.0 up University of Vermont
   * Extension, sap pricing. The newer densities lie 0.03 percent higher there.
   */
  @Test
  void a_gallon_weighs_in_air_what_the_tables_say() {
    for (CSVRecord row : TestTable.rows("syrup_weight_in_air.csv")) {
      double brix = TestTable.number(row, "brix");
      Syrup syrup = new Syrup(brix);
      double pounds = syrup.weightInAir(syrup.gramsForML20(GALLON)) / POUND;
      double published = TestTable.number(row, "pounds_per_us_gallon");
      assertEquals(published, pounds, brix <= 5 ? 0.0015 : 0.004, () -> brix + " °Bx");
    }
  }

  /**
   * Fill weights at 66.9 °Bx (common practice of filling by weight at 68 °F). Worked by hand from
   * the same densities, so this guards the arithmetic; the table above is the outside check.
   */
  @ParameterizedTest
  @CsvSource({"16, 314.0", "8, 628.0", "4, 1256.0", "2, 2512.0", "1, 5024.0"})
  void fill_weights_at_66_9(double perGallon, double grams) {
    Syrup syrup = new Syrup(66.9);
    assertEquals(grams, syrup.weightInAir(syrup.gramsForML20(GALLON / perGallon)), 0.05);
  }

  /** As above; a pint of the lightest Grade A syrup. */
  @Test
  void a_pint_at_66_0_weighs_625_4_g() {
    Syrup syrup = new Syrup(66.0);
    assertEquals(625.4, syrup.weightInAir(syrup.gramsForML20(GALLON / 8)), 0.05);
  }

  /** Worked by hand from the densities; the hydrometer chart gives 0.972 for the same ratio. */
  @Test
  void a_hundred_hot_gallons_are_97_1_cold_ones() {
    Syrup syrup = new Syrup(66.9);
    double grams = syrup.gramsForMLAt(100 * GALLON, CELSIUS_185F);
    assertEquals(97.1, syrup.mLAt20(grams) / GALLON, 0.05);
    assertEquals(1.030, syrup.mLAt(syrup.gramsForML20(GALLON), CELSIUS_185F) / GALLON, 0.0005);
  }

  /** Pack-day scenario, worked by hand: net pounds and Brix to gallons at 68 °F. */
  @ParameterizedTest
  @CsvSource({
    "444.5, 66.9, 40.13",
    "226.5, 67.4, 20.40",
    "130.0, 66.2, 11.78",
    "801.0, 66.92777, 72.31",
    "440.0, 66.9, 39.73"
  })
  void net_pounds_and_brix_give_gallons(double pounds, double brix, double gallons) {
    Syrup syrup = new Syrup(brix);
    double mL = syrup.mLAt20(syrup.massFromWeight(pounds * POUND));
    assertEquals(gallons, mL / GALLON, 0.006);
  }

  /** Pack-day scenario: 21.5 gal on the stick, read at 185 °F, are 20.88 at 68 °F. */
  @Test
  void a_hot_dipstick_comes_down_to_its_cold_volume() {
    Syrup syrup = new Syrup(67.4);
    double cold = syrup.mLAt20(syrup.gramsForMLAt(21.5 * GALLON, CELSIUS_185F)) / GALLON;
    assertEquals(20.88, cold, 0.005);
  }

  /** OIML D 28: at 8000 kg/m³ weight and mass are the same; water 0.106 percent apart. */
  @Test
  void air_carries_light_things_more() {
    assertEquals(1000, Air.weight(1000, 8000), 1e-12);
    assertEquals(998.95, Air.weight(1000, 998.2), 0.005);
    assertThrows(IllegalArgumentException.class, () -> Air.mass(1, 1.2));
    assertThrows(IllegalArgumentException.class, () -> Air.weight(1, Double.NaN));
  }

  @Test
  void mass_volume_and_weight_come_back() {
    Random random = new Random(SEED);
    for (int i = 0; i < 2000; i++) {
      Syrup syrup = new Syrup(random.nextDouble() * 70);
      double grams = random.nextDouble() * 300_000;
      double celsius = random.nextDouble() * 100;
      double close = 1e-9 * grams;
      assertEquals(grams, syrup.gramsForMLAt(syrup.mLAt(grams, celsius), celsius), close);
      assertEquals(grams, syrup.gramsForML20(syrup.mLAt20(grams)), close);
      assertEquals(grams, syrup.massFromWeight(syrup.weightInAir(grams)), close);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, 70.5, Double.NaN})
  void is_refused_beyond_the_density_table(double brix) {
    assertThrows(OutsideDensityRange.class, () -> new Syrup(brix));
  }
}
