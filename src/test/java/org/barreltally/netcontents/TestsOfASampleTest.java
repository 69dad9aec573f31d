package org.barreltally.netcontents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.containers.Container;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Syrup;
import org.barreltally.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tests of mean and single jars on samples whose figures are known. */
class TestsOfASampleTest {

  private static final Container PINT =
      new Container(
          "PT", "Pint jug", Quantity.of(1, Unit.PT), null, null, Container.Material.PLASTIC);
  private static final Contents PINT_AT_66_9 = new Contents(PINT, new Syrup(66.9));

  /** Twelve pints of mean 626.9 g and s 1.9 g. */
  private static final Sample WORKED =
      sample(
          "625.16", "628.33", "626.08", "629.96", "624.45", "627.41", "626.59", "628.84", "625.78",
          "627.00", "624.04", "629.16");

  private static Sample sample(String... grams) {
    List<BigDecimal> weights = new ArrayList<>();
    for (String gram : grams) {
      weights.add(new BigDecimal(gram));
    }
    return new Sample(weights);
  }

  /** So many jars of which some are short by so many grams and the rest are full. */
  private static Sample with(int size, int shortJars, double byGrams) {
    List<BigDecimal> weights = new ArrayList<>(Collections.nCopies(size, BigDecimal.valueOf(640)));
    double nominal = PINT_AT_66_9.nominalGrams();
    for (int i = 0; i < shortJars; i++) {
      weights.set(i, BigDecimal.valueOf(nominal - byGrams));
    }
    return new Sample(weights);
  }

  /**
   * Source: worked example of practice: nominal 628.0 g at 66.9 °Bx, 12 pints of mean 626.9 and s
   * 1.9 pass with −1.1 ≥ −0.635 × 1.9 = −1.21.
   */
  @Test
  void twelve_pints_short_by_1_1_grams_pass_in_the_us_manner() {
    assertEquals(628.0, PINT_AT_66_9.nominalGrams(), 0.05);
    assertEquals(626.9, WORKED.mean(), 1e-9);
    assertEquals(1.9, WORKED.standardDeviation(), 0.005);
    assertEquals(624.04, WORKED.shortest());
    AverageTest test = AverageTest.of(UsPlan.of(160, 12).factor(), WORKED, 628.0);
    assertEquals(-1.1 + 1.21, test.margin(), 0.005);
    assertEquals(Verdict.PASS, test.verdict());
  }

  @Test
  void two_tenths_of_a_gram_less_fail() {
    AverageTest test = AverageTest.of(UsPlan.of(160, 12).factor(), WORKED, 628.2);
    assertEquals(Verdict.FAIL, test.verdict());
  }

  @Test
  void a_margin_of_nothing_passes() {
    Sample even = sample("628", "628", "628");
    assertEquals(0, even.standardDeviation());
    assertEquals(Verdict.PASS, AverageTest.of(UsPlan.of(3, 3).factor(), even, 628).verdict());
    assertEquals(Verdict.FAIL, AverageTest.of(UsPlan.of(3, 3).factor(), even, 628.001).verdict());
  }

  /** Source: 14.2 mL of syrup that weighs 628.0 g to 473.176 mL are 18.85 g. */
  @Test
  void a_volume_short_is_judged_by_its_weight() {
    assertEquals(18.85, PINT_AT_66_9.grams(Quantity.of("14.2", Unit.ML)), 0.01);
    assertEquals(28.35, PINT_AT_66_9.grams(Quantity.of(1, Unit.OZ)), 0.01);
  }

  /** Source: Directive 76/211/EEC, annex II, 2.2.1: 30 jars pass with 1, fail with 3. */
  @ParameterizedTest
  @CsvSource({
    "30, 0, 20, pass",
    "30, 1, 20, pass",
    "30, 2, 20, second-sample",
    "30, 3, 20, fail",
    "30, 3, 18.8, pass",
    "30, 1, 37.6, pass",
    "30, 1, 37.8, fail",
    "20, 1, 20, pass",
    "20, 2, 20, fail",
    "50, 2, 20, pass",
    "50, 4, 20, second-sample",
    "50, 5, 20, fail"
  })
  void single_jars_in_the_european_manner(int size, int shortJars, double by, String verdict) {
    Individual found =
        SingleJars.european(EuPlan.of(600, size), with(size, shortJars, by), PINT_AT_66_9);
    assertEquals(verdict, found.verdict().code());
    assertEquals(Quantity.of("14.2", Unit.ML), found.tolerance());
  }

  @Test
  void without_the_owners_table_single_jars_are_not_checked_and_it_is_said() {
    Individual found =
        SingleJars.american(UsPlan.of(160, 12), with(12, 5, 300), PINT_AT_66_9, Optional.empty());
    assertEquals(Verdict.NOT_CHECKED, found.verdict());
    assertNull(found.tolerance());
    assertTrue(found.words().contains("Only the average was tested"));
  }

  @ParameterizedTest
  @CsvSource({"160, 12, 0, pass", "160, 12, 1, fail", "4000, 48, 1, pass", "4000, 48, 2, fail"})
  void with_it_the_us_plan_says_how_many_may_be_beyond(
      int lot, int size, int shortJars, String verdict) {
    AllowedVariation tenMl =
        new AllowedVariation(
            UUID.randomUUID(),
            "PT",
            null,
            null,
            Quantity.of(10, Unit.ML),
            "Invented",
            Instant.EPOCH);
    Individual found =
        SingleJars.american(
            UsPlan.of(lot, size), with(size, shortJars, 14), PINT_AT_66_9, Optional.of(tenMl));
    assertEquals(verdict, found.verdict().code());
    assertEquals(shortJars, found.beyond());
  }
}
