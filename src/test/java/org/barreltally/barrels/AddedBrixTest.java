package org.barreltally.barrels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.barreltally.measure.Uncertain;
import org.junit.jupiter.api.Test;

/** Sugar of the whole is sugar that was there and sugar added; uncertainty by GUM 5.1.2. */
class AddedBrixTest {

  @Test
  void the_sugar_of_the_whole_tells_the_brix_of_what_was_added() {
    // 226.5 at 67.4 and 218.0 more make 444.5 at 66.9: (29737.05 - 15266.10) / 218.0 = 66.3805
    Uncertain added =
        AddedBrix.of(
            Uncertain.exact(226.5),
            Uncertain.exact(67.4),
            Uncertain.exact(444.5),
            Uncertain.exact(66.9));
    assertEquals(66.3805, added.value(), 1e-4);
    assertEquals(0, added.u(), 0);
  }

  @Test
  void its_uncertainty_grows_as_less_is_added() {
    // (hypot(200 × 0.1, 100 × 0.1)) / 100 = 0.2236, and with ten grams added (hypot(11, 10)) / 10
    assertEquals(0.22361, half(0.1, 100).u(), 1e-5);
    assertEquals(1.48661, half(0.1, 10).u(), 1e-5);
  }

  @Test
  void a_weight_that_is_unsure_counts_as_far_as_the_two_syrups_differ() {
    Uncertain added =
        AddedBrix.of(
            new Uncertain(100, 3), Uncertain.exact(68), new Uncertain(200, 4), Uncertain.exact(66));
    // added is 64; u = hypot((66 - 64) × 4, (64 - 68) × 3) / 100
    assertEquals(64, added.value(), 1e-9);
    assertEquals(Math.hypot(8, 12) / 100, added.u(), 1e-9);
  }

  @Test
  void what_the_uncertainty_reaches_is_taken_to_the_nearest_syrup() {
    Uncertain added =
        AddedBrix.of(
            Uncertain.exact(226.5),
            new Uncertain(67.4, 0.115),
            Uncertain.exact(232),
            new Uncertain(67.6, 0.115));
    assertEquals(70, added.value(), 0);
  }

  @Test
  void what_no_uncertainty_explains_is_refused() {
    assertThrows(
        AddedSyrupImplausible.class,
        () ->
            AddedBrix.of(
                Uncertain.exact(226.5),
                new Uncertain(67.4, 0.115),
                Uncertain.exact(444.5),
                new Uncertain(56, 0.115)));
    assertThrows(
        AddedSyrupImplausible.class,
        () ->
            AddedBrix.of(
                Uncertain.exact(226.5),
                new Uncertain(60, 0.115),
                Uncertain.exact(444.5),
                new Uncertain(69, 0.115)));
  }

  private static Uncertain half(double u, double added) {
    return AddedBrix.of(
        Uncertain.exact(100),
        new Uncertain(66, u),
        Uncertain.exact(100 + added),
        new Uncertain(66, u));
  }
}
