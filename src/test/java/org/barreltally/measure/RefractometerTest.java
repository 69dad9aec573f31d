package org.barreltally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RefractometerTest {
  private static final double REFERENCE_60F = 140.0 / 9;

  /** Source: OIV-MA-AS2-02, table I: newer measurements by another body than the table used. */
  @Test
  void agrees_with_a_newer_table_within_five_hundredths() {
    int compared = 0;
    for (CSVRecord row : TestTable.rows("refractometer_correction_oiv.csv")) {
      double celsius = TestTable.number(row, "celsius");
      for (String reading : new String[] {"10", "20", "30", "40", "50", "60", "70"}) {
        double brix = Double.parseDouble(reading);
        double correction = Refractometer.trueBrix(brix, celsius, 20) - brix;
        assertEquals(
            TestTable.number(row, reading), correction, 0.0501, reading + " at " + celsius + " °C");
        compared++;
      }
    }
    assertEquals(42, compared);
  }

  /**
   * The warm end by another road. Refractive index of water 1.33299 at 20 °C, 1.33194 at 30 °C (ISO
   * 1743, table for 0 percent); one percent of sucrose adds 0.00143 (from memory).
   */
  @Test
  void agrees_with_the_refractive_index_of_water_where_it_is_warm() {
    double bySlope = (1.33299 - 1.33194) / 0.00143;
    assertEquals(bySlope, Refractometer.trueBrix(0, 30, 20), 0.03);
  }

  /** Source: the International Temperature Correction Table itself, entries and halfway between. */
  @ParameterizedTest
  @CsvSource({
    "60, 15, 59.61",
    "70, 10, 69.21",
    "66, 20, 66",
    "65, 15, 64.605",
    "60, 25, 60.40",
    "60, 25.5, 60.44",
    "-0.72, 30, 0"
  })
  void corrects_as_the_table_says(double reading, double celsius, double expected) {
    assertEquals(expected, Refractometer.trueBrix(reading, celsius, 20), 1e-9);
  }

  @Test
  void corrections_grow_smoothly_with_temperature() {
    for (int brix = 0; brix <= 69; brix++) {
      for (int celsius = 10; celsius < 30; celsius++) {
        double reading = brix == 0 ? 1 : brix;
        double step =
            Refractometer.trueBrix(reading, celsius + 1, 20)
                - Refractometer.trueBrix(reading, celsius, 20);
        String where = brix + " °Bx from " + celsius + " °C";
        assertTrue(step >= 0.039 && step <= 0.101, () -> where + ": " + step);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {20, REFERENCE_60F, 35})
  void one_read_at_its_reference_needs_no_correction(double reference) {
    Uncertain read =
        Refractometer.trueBrix(Uncertain.within(66.9, 0.2), Uncertain.exact(reference), reference);
    assertEquals(66.9, read.value());
    assertEquals(0.2 / Math.sqrt(3), read.u(), 1e-9);
  }

  /**
   * A 60 °F instrument in a sample at 68 °F: the change it would show between the two temperatures
   * on a 68 °F scale, from the table (0.35 to 0.36 at 66 °Bx), is the correction.
   */
  @Test
  void corrects_to_a_reference_of_60_degrees_fahrenheit() {
    double change = 66.0 - Refractometer.trueBrix(66.0, REFERENCE_60F, 20);
    assertEquals(66.0 + change, Refractometer.trueBrix(66.0, 20, REFERENCE_60F), 0.01);
    assertTrue(change > 0.33 && change < 0.38, () -> "change " + change);
  }

  @Test
  void carries_the_uncertainty_of_reading_and_temperature() {
    Uncertain read =
        Refractometer.trueBrix(Uncertain.within(66.9, 0.2), Uncertain.within(25, 1), 20);
    assertEquals(Math.hypot(0.2, 0.08) / Math.sqrt(3), read.u(), 0.002);
  }

  @ParameterizedTest
  @ValueSource(doubles = {9.9, 30.1, 85, Double.NaN})
  void refuses_samples_too_cold_or_too_hot(double celsius) {
    OutsideInstrumentRange refusal =
        assertThrows(OutsideInstrumentRange.class, () -> Refractometer.trueBrix(66, celsius, 20));
    assertTrue(refusal.detail().contains("from 50 °F to 86 °F"), refusal.detail());
  }

  @ParameterizedTest
  @CsvSource({"70, 25", "80, 20", "-0.5, 20", "NaN, 20"})
  void refuses_results_beyond_the_density_table(double reading, double celsius) {
    assertThrows(OutsideDensityRange.class, () -> Refractometer.trueBrix(reading, celsius, 20));
  }
}
