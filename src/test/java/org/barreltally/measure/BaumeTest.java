package org.barreltally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BaumeTest {
  private static final long SEED = 145;

  /** Source: Mohos, Confectionery and Chocolate Engineering (2010), appendix 2; Vermont's rule. */
  @Test
  void agrees_with_the_published_table() {
    for (CSVRecord row : TestTable.rows("brix_baume.csv")) {
      double brix = TestTable.number(row, "brix");
      assertEquals(
          TestTable.number(row, "baume_145"), Baume.fromBrix(brix), 0.06, () -> brix + " °Bx");
    }
  }

  /** Source: Vermont maple regulations: 36 °Bé = 66.9 °Bx, 37 °Bé = 68.9 °Bx. */
  @ParameterizedTest
  @CsvSource({"36, 66.9", "37, 68.9", "36.2, 67.3"})
  void agrees_with_the_trade_back_to_brix(double baume, double brix) {
    assertEquals(brix, Baume.toBrix(baume), 0.1);
  }

  @Test
  void comes_back_through_either_scale() {
    Random random = new Random(SEED);
    for (int i = 0; i < 2000; i++) {
      double brix = random.nextDouble() * 70;
      assertEquals(brix, Baume.toBrix(Baume.fromBrix(brix)), 1e-8, () -> "seed " + SEED);
    }
    assertEquals(0, Baume.fromBrix(0), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"-1", "38", "145", "NaN"})
  void refuses_beyond_seventy_brix(double baume) {
    assertThrows(OutsideDensityRange.class, () -> Baume.toBrix(baume));
  }
}
