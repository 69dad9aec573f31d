package org.barreltally.netcontents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.apache.commons.csv.CSVRecord;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TolerableDeficiencyTest {

  private static Quantity of(String contents, Unit unit) {
    return TolerableDeficiency.of(Quantity.of(contents, unit)).orElseThrow();
  }

  /**
   * Source: worked by hand from the table of OIML R 87, percentages rounded up to a tenth: pint
   * 473.176 mL × 3 % = 14.195; gallon 3785.41 mL × 1.5 % = 56.78.
   */
  @ParameterizedTest
  @CsvSource({
    "1, pt, 14.2",
    "8, floz, 9",
    "1, qt, 15",
    "1, gal, 56.8",
    "0.5, gal, 28.4",
    "500, mL, 15",
    "250, mL, 9",
    "100, mL, 4.5",
    "1, L, 15",
    "50, mL, 4.5"
  })
  void sizes_have_the_tolerance_of_the_table(String contents, String unit, String mL) {
    assertEquals(Quantity.of(mL, Unit.ML), of(contents, Unit.of(unit)));
  }

  /** Source: OIML R 87, tolerable deficiency; also New Zealand 1999, Schedule 7A, table 2. */
  @Test
  void every_row_of_the_printed_table_holds_up_to_its_end() {
    int seen = 0;
    for (CSVRecord row : Printed.rows("prepackage_tolerances.csv")) {
      BigDecimal end = new BigDecimal(row.get("up_to"));
      BigDecimal printed =
          row.get("percent").isEmpty()
              ? new BigDecimal(row.get("absolute"))
              : end.multiply(new BigDecimal(row.get("percent")))
                  .divide(BigDecimal.valueOf(100), 1, RoundingMode.UP);
      assertEquals(Quantity.of(printed, Unit.ML), of(row.get("up_to"), Unit.ML));
      seen++;
    }
    assertEquals(9, seen);
  }

  @Test
  void a_percentage_is_rounded_up_and_never_down() {
    assertEquals(Quantity.of("9.1", Unit.ML), of("300.1", Unit.ML));
    assertEquals(Quantity.of("4.6", Unit.ML), of("100.1", Unit.ML));
    assertEquals(Quantity.of("9", Unit.ML), of("300", Unit.ML));
  }

  @Test
  void beyond_fifty_litres_none_is_known() {
    assertTrue(TolerableDeficiency.of(Quantity.of("50.1", Unit.L)).isEmpty());
  }
}
