package org.barreltally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.apache.commons.csv.CSVRecord;
import org.barreltally.refusal.InvalidField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SapTest {

  /** Source: Perkins and Isselhardt, University of Vermont, "The Jones Rule of 86 Revisited". */
  @Test
  void agrees_with_the_revised_rule_within_one_percent() {
    for (CSVRecord row : TestTable.rows("sap_per_syrup.csv")) {
      double published = TestTable.number(row, "volumes_of_sap");
      double modelled =
          Sap.volumesPerVolume(
              TestTable.number(row, "sap_brix"), TestTable.number(row, "syrup_brix"));
      assertEquals(published, modelled, 0.01 * published, () -> "sap of " + row.get("sap_brix"));
    }
  }

  /** Source: as above, as formulas: 87.1/X − 0.32 for 66.0 and 88.2/X − 0.32 for 66.9 °Bx. */
  @ParameterizedTest
  @ValueSource(doubles = {1.5, 2, 3, 4, 6, 8})
  void agrees_with_the_revised_formulas_over_their_range(double sapBrix) {
    double at66 = 87.1 / sapBrix - 0.32;
    double at669 = 88.2 / sapBrix - 0.32;
    assertEquals(at66, Sap.volumesPerVolume(sapBrix, 66.0), 0.01 * at66);
    assertEquals(at669, Sap.volumesPerVolume(sapBrix, 66.9), 0.01 * at669);
  }

  /** Source: the trade's rule of 86 (NIST News, January 2017: 2 % → 43, 4 % → "around 22"). */
  @ParameterizedTest
  @CsvSource({"2, 43", "4, 21.5"})
  void knows_the_rule_of_86(double sapBrix, double volumes) {
    assertEquals(volumes, Sap.ruleOf86(sapBrix));
  }

  /** Source: as above; the table's figures are 87.1/2 − 0.32 = 43.23 and so on, to two decimals. */
  @Test
  void knows_the_revised_rule() {
    for (CSVRecord row : TestTable.rows("sap_per_syrup.csv")) {
      assertEquals(
          TestTable.number(row, "volumes_of_sap"),
          Sap.revisedRule(TestTable.number(row, "sap_brix"), TestTable.number(row, "syrup_brix")),
          0.005);
    }
  }

  /** Half way from 66.0 to 66.9 is half way from 87.1 to 88.2; beyond, the nearer one holds. */
  @ParameterizedTest
  @CsvSource({"64.0, 87.1", "66.0, 87.1", "66.45, 87.65", "66.9, 88.2", "68.5, 88.2"})
  void takes_the_numerator_that_applies(double syrupBrix, double numerator) {
    assertEquals(numerator, Sap.revisedNumerator(syrupBrix), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN})
  void refuses_sap_without_sugar(double sapBrix) {
    assertThrows(InvalidField.class, () -> Sap.volumesPerVolume(sapBrix, 66.9));
    assertThrows(InvalidField.class, () -> Sap.ruleOf86(sapBrix));
    assertThrows(InvalidField.class, () -> Sap.revisedRule(sapBrix, 66.9));
  }
}
