package org.barreltally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HydrometerTest {
  private static final double REFERENCE_60F = 140.0 / 9;
  private static final double REFERENCE_68F = 20;
  private static final long SEED = 60;

  /** Source: temperature chart printed by sellers of maple hydrometers, 60 °F scale, 66.0 °Bx. */
  @Test
  void reads_in_syrup_of_66_0_what_the_chart_says() {
    agreesWithChart("hydrometer_chart_66.csv", 66.0, 0.25);
  }

  /** Source: as above, 66.9 °Bx; its middle rows are rounded further off. */
  @Test
  void reads_in_syrup_of_66_9_what_the_chart_says() {
    agreesWithChart("hydrometer_chart_66_9.csv", 66.9, 0.35);
  }

  private static void agreesWithChart(String file, double brix, double within) {
    for (CSVRecord row : TestTable.rows(file)) {
      double celsius = TestTable.celsius(row, "fahrenheit");
      double printed = TestTable.number(row, "reading_brix");
      String at = row.get("fahrenheit") + " °F";
      assertEquals(printed, Hydrometer.reading(brix, celsius, REFERENCE_60F), within, at);
      assertEquals(brix, Hydrometer.trueBrix(printed, celsius, REFERENCE_60F), within, at);
    }
  }

  @ParameterizedTest
  @CsvSource({"0", "2", "66.9", "70"})
  void is_true_at_its_reference(double brix) {
    assertEquals(brix, Hydrometer.trueBrix(brix, REFERENCE_68F, REFERENCE_68F), 1e-9);
    assertEquals(brix, Hydrometer.trueBrix(brix, REFERENCE_60F, REFERENCE_60F), 1e-9);
  }

  @Test
  void a_60_degree_scale_shows_less_at_68_than_a_68_degree_scale() {
    double on60 = Hydrometer.reading(66.9, REFERENCE_68F, REFERENCE_60F);
    assertTrue(on60 < 66.8 && on60 > 66.4, () -> "read " + on60);
  }

  /** By hand: glass of 25e-6 per °C grows by 0.1736 percent from 60 to 185 °F (69.44 °C). */
  @Test
  void warm_glass_displaces_more() {
    double shown = Sucrose.density(Hydrometer.reading(66.9, 85, REFERENCE_60F), REFERENCE_60F);
    assertEquals(1.001736, shown / Sucrose.density(66.9, 85), 1e-6);
  }

  @Test
  void reading_and_true_brix_undo_each_other() {
    Random random = new Random(SEED);
    for (int i = 0; i < 2000; i++) {
      double brix = 10 + random.nextDouble() * 55;
      double celsius = 2 + random.nextDouble() * 68;
      double reading = Hydrometer.reading(brix, celsius, REFERENCE_60F);
      assertEquals(
          brix, Hydrometer.trueBrix(reading, celsius, REFERENCE_60F), 1e-8, () -> "seed " + SEED);
    }
  }

  /** Slopes by hand from the chart: about 0.05 °Bx per °F where it is hot. */
  @Test
  void carries_the_uncertainty_of_reading_and_temperature() {
    Uncertain hot =
        Hydrometer.trueBrix(
            Uncertain.within(60.4, 0.3), Uncertain.within(85, 10.0 / 9), REFERENCE_60F);
    double byReading = 0.3 / Math.sqrt(3);
    double byTemperature = 0.055 * 2 / Math.sqrt(3);
    assertEquals(Math.hypot(byReading, byTemperature), hot.u(), 0.02);
    Uncertain known =
        Hydrometer.trueBrix(Uncertain.within(66.9, 0.3), Uncertain.exact(20), REFERENCE_68F);
    assertEquals(byReading, known.u(), 1e-4);
  }

  @ParameterizedTest
  @CsvSource({"34.9", "212.1", "-40", "1000"})
  void refuses_temperatures_outside_35_to_212_degrees_fahrenheit(String fahrenheit) {
    double celsius = Quantity.of(fahrenheit, Unit.DEGF).doubleIn(Unit.DEGC);
    OutsideInstrumentRange refusal =
        assertThrows(
            OutsideInstrumentRange.class, () -> Hydrometer.trueBrix(60, celsius, REFERENCE_60F));
    assertEquals("outside-instrument-range", refusal.code());
    assertEquals("temperature", refusal.errors().get(0).field());
    assertTrue(refusal.detail().contains("from 35 °F to 212 °F"), refusal.detail());
    assertThrows(
        OutsideInstrumentRange.class, () -> Hydrometer.reading(60, celsius, REFERENCE_60F));
  }

  @ParameterizedTest
  @CsvSource({"35, 66", "212, 58"})
  void accepts_both_ends(String fahrenheit, double reading) {
    double celsius = Quantity.of(fahrenheit, Unit.DEGF).doubleIn(Unit.DEGC);
    double brix = Hydrometer.trueBrix(reading, celsius, REFERENCE_60F);
    assertTrue(brix > 60 && brix < 70, () -> "true " + brix);
  }

  @Test
  void refuses_syrup_beyond_the_density_table() {
    assertThrows(OutsideDensityRange.class, () -> Hydrometer.trueBrix(66, 95, REFERENCE_60F));
    assertThrows(
        OutsideInstrumentRange.class, () -> Hydrometer.trueBrix(60, Double.NaN, REFERENCE_60F));
  }
}
