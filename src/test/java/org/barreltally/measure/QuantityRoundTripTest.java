package org.barreltally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;

class QuantityRoundTripTest {
  private static final long SEED = 20260314;
  private static final BigDecimal NEXT_TO_NOTHING = new BigDecimal("1e-18");

  @Test
  void any_quantity_comes_back_through_any_unit_of_its_dimension() {
    Random random = new Random(SEED);
    int compared = 0;
    for (int i = 0; i < 5000; i++) {
      Unit from = Unit.values()[random.nextInt(Unit.values().length)];
      Unit to = Unit.values()[random.nextInt(Unit.values().length)];
      if (from.dimension() != to.dimension() || from.dimension() == Dimension.SUGAR) {
        continue;
      }
      BigDecimal value =
          BigDecimal.valueOf(random.nextLong(-999_999_999_999L, 1_000_000_000_000L), 6);
      BigDecimal back = to.convert(from.convert(value, to), from);
      assertTrue(
          back.subtract(value).abs().compareTo(NEXT_TO_NOTHING) < 0,
          () -> "seed " + SEED + ": " + value + " " + from + " by " + to + " gave " + back);
      compared++;
    }
    assertTrue(compared > 500, "only " + compared);
  }

  @Test
  void grams_are_rounded_half_up_to_whole_ones() {
    assertEquals(201622, Grams.rounded(201621.5));
    assertEquals(201621, Grams.rounded(201621.49));
    assertEquals(0, Grams.rounded(0.2));
  }
}
