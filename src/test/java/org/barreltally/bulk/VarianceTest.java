package org.barreltally.bulk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Random;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.pricing.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Worked by hand. Ours: 444.5 lb of amber at 2.35 is 1044.575, that is 1044.58. Agreed: 443.0 lb of
 * dark at 2.20 is 974.60. The agreed amount is 69.98 less. By weight: 443.0 − 444.5 = −1.5 lb at
 * 2.35 is −3.525, that is −3.53. By grade: 2.20 − 2.35 = −0.15 at 443.0 lb is −66.45. Together
 * −69.98. The split is the price and quantity variance of standard costing (OpenStax Principles of
 * Accounting, volume 2, chapter on standard costs; section from memory).
 */
class VarianceTest {

  @ParameterizedTest(name = "ours {0} {1} at {2}, agreed {3} {4} at {5}")
  @CsvSource({
    "444.5, lb, 2.35, 443.0, lb, 2.20, -69.98, -3.53, -66.45",
    // the same grade: all of it is weight, a cent of rounding included
    "444.5, lb, 2.15, 443.0, lb, 2.15, -3.23, -3.23, 0.00",
    // the same weight: all of it is grade
    "444.5, lb, 2.35, 444.5, lb, 2.20, -66.68, 0.00, -66.68",
    // heavier and lighter in colour: both in our favour
    "100, lb, 2.00, 101, lb, 2.50, 52.50, 2.00, 50.50",
    // heavier but darker: they pull against each other
    "400, lb, 2.50, 410, lb, 2.40, -16.00, 25.00, -41.00",
    // 200 kg is 440.9245 lb: 200 / 0.45359237
    "200, kg, 2.00, 440, lb, 2.00, -1.85, -1.85, 0.00"
  })
  void it_is_split_into_weight_and_grade(
      String ourWeight,
      String ourUnit,
      String ourPrice,
      String weight,
      String unit,
      String price,
      String total,
      String byWeight,
      String byGrade) {
    Variance variance =
        Variance.between(figures(ourWeight, ourUnit, ourPrice), figures(weight, unit, price));
    assertEquals(Money.of(total, "USD"), variance.total());
    assertEquals(Money.of(byWeight, "USD"), variance.byWeight());
    assertEquals(Money.of(byGrade, "USD"), variance.byGrade());
  }

  @Test
  void the_two_always_add_up_and_are_off_by_rounding_at_most() {
    Random random = new Random(20260512);
    for (int i = 0; i < 5_000; i++) {
      Figures ours = any(random);
      Figures agreed = any(random);
      Variance variance = Variance.between(ours, agreed);
      assertEquals(agreed.amount().minus(ours.amount()), variance.total());
      assertEquals(variance.total(), variance.byWeight().plus(variance.byGrade()));
      BigDecimal exact =
          agreed.pricePerLb().minus(ours.pricePerLb()).amount().multiply(agreed.pounds());
      BigDecimal off = exact.subtract(variance.byGrade().amount()).abs();
      assertTrue(off.compareTo(new BigDecimal("0.015")) <= 0, ours + " " + agreed + " " + off);
    }
  }

  private static Figures any(Random random) {
    return figures(
        BigDecimal.valueOf(1 + random.nextInt(60_000), 2).toPlainString(),
        random.nextBoolean() ? "lb" : "kg",
        BigDecimal.valueOf(random.nextInt(500), 2).toPlainString());
  }

  private static Figures figures(String weight, String unit, String price) {
    return Figures.of(Quantity.of(weight, Unit.of(unit)), ColorClass.DARK, Money.of(price, "USD"));
  }
}
