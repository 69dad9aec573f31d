package org.barreltally.netcontents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.csv.CSVRecord;
import org.barreltally.refusal.InvalidField;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sampling plans and factors of the two manners. */
class PlansTest {

  /** Three decimals are printed; the handbook prints 0.291 for 48, where t gives 0.2904. */
  private static final double AS_PRINTED = 0.0007;

  private static double t(double probability, int n) {
    return new TDistribution(n - 1).inverseCumulativeProbability(probability) / Math.sqrt(n);
  }

  /** Source: NIST Handbook 133, table 2-1; the factors again from Student's t by Hipparchus. */
  @Test
  void the_us_plan_is_the_printed_one_and_its_factors_are_student_t() {
    int seen = 0;
    for (CSVRecord row : Printed.rows("net_contents_sampling.csv")) {
      int n = Integer.parseInt(row.get("sample_size"));
      int from = Integer.parseInt(row.get("lot_from"));
      int to = row.get("lot_to").isEmpty() ? 1_000_000 : Integer.parseInt(row.get("lot_to"));
      for (int lot : new int[] {from, to}) {
        UsPlan plan = UsPlan.of(lot, n);
        assertEquals(row.get("sample_correction_factor"), plan.factor().toPlainString());
        assertEquals(row.get("packages_over_tolerance_allowed"), Integer.toString(plan.allowed()));
        assertEquals(t(0.975, n), plan.factor().doubleValue(), AS_PRINTED);
      }
      seen++;
    }
    assertEquals(13, seen);
  }

  /** Source: UK SI 2006/659, schedule 2; the factors again from Student's t by Hipparchus. */
  @Test
  void the_european_factors_are_the_printed_ones_and_student_t() {
    int seen = 0;
    for (CSVRecord row : Printed.rows("net_contents_mean_test_eu.csv")) {
      int n = Integer.parseInt(row.get("sample_size"));
      EuPlan plan = EuPlan.of(100_000, n);
      assertEquals(row.get("factor"), plan.factor().toPlainString());
      assertEquals(t(0.995, n), plan.factor().doubleValue(), AS_PRINTED);
      seen++;
    }
    assertEquals(3, seen);
  }

  /** Source: Directive 76/211/EEC, annex II, 2.2.1 and 2.2.2. */
  @ParameterizedTest
  @CsvSource({"20, 1, 2", "30, 1, 3", "50, 2, 5"})
  void knows_how_many_may_be_beyond_the_tolerance(int size, int accepted, int refusedFrom) {
    EuPlan plan = EuPlan.of(600, size);
    assertEquals(accepted, plan.accepted());
    assertEquals(refusedFrom, plan.refusedFrom());
  }

  @ParameterizedTest
  @CsvSource({"20, 160, false", "30, 160, false", "50, 160, true", "30, 501, true", "20, 99, true"})
  void minds_a_sample_the_european_plan_draws_from_other_lots(int n, int lot, boolean minded) {
    assertEquals(minded, EuPlan.of(lot, n).caution(lot).isPresent());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 12, 19, 21, 24, 48, 80, 5_000})
  void other_european_samples_are_refused(int n) {
    assertThrows(WrongSampleSize.class, () -> EuPlan.of(100_000, n));
  }

  @Test
  void a_european_sample_is_not_larger_than_its_lot() {
    assertEquals(20, EuPlan.of(20, 20).sampleSize());
    assertThrows(WrongSampleSize.class, () -> EuPlan.of(19, 20));
  }

  @ParameterizedTest
  @CsvSource({"160, 11", "160, 13", "160, 20", "11, 12", "251, 12", "3201, 24", "2, 1"})
  void another_us_sample_than_the_plans_is_refused(int lot, int n) {
    WrongSampleSize refusal = assertThrows(WrongSampleSize.class, () -> UsPlan.of(lot, n));
    assertEquals("netWeights", refusal.errors().get(0).field());
  }

  @Test
  void a_lot_of_one_is_no_lot() {
    InvalidField refusal = assertThrows(InvalidField.class, () -> UsPlan.of(1, 1));
    assertEquals("lotSize", refusal.errors().get(0).field());
  }

  @Test
  void the_manners_are_not_mixed() {
    assertThrows(WrongSampleSize.class, () -> UsPlan.of(160, 20));
    assertThrows(WrongSampleSize.class, () -> EuPlan.of(160, 12));
    assertFalse(EuPlan.of(160, 20).factor().equals(UsPlan.of(160, 12).factor()));
    assertTrue(UsPlan.of(3201, 48).factor().compareTo(EuPlan.of(3201, 50).factor()) < 0);
  }
}
