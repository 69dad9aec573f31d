package org.barreltally.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class UncertainTest {
  private static final double TIGHT = 1e-12;

  /** GUM (JCGM 100:2008) 4.3.7: a/√3. */
  @Test
  void limits_become_a_standard_uncertainty_by_the_root_of_three() {
    assertEquals(0.5 / Math.sqrt(3), Uncertain.within(444.5, 0.5).u(), TIGHT);
    assertEquals(0, Uncertain.exact(7).u());
  }

  @Test
  void sums_and_differences_add_in_quadrature() {
    Uncertain a = new Uncertain(10, 3);
    Uncertain b = new Uncertain(4, 4);
    assertEquals(new Uncertain(14, 5), a.plus(b));
    assertEquals(new Uncertain(6, 5), a.minus(b));
  }

  /** GUM 5.1.6: relative uncertainties of a product add in quadrature. */
  @Test
  void products_and_quotients_add_relatively() {
    Uncertain a = new Uncertain(10, 0.3);
    Uncertain b = new Uncertain(-5, 0.2);
    double relative = Math.hypot(0.03, 0.04);
    assertEquals(-50, a.times(b).value());
    assertEquals(50 * relative, a.times(b).u(), TIGHT);
    assertEquals(-2, a.dividedBy(b).value());
    assertEquals(2 * relative, a.dividedBy(b).u(), TIGHT);
    assertEquals(new Uncertain(-20, 0.6), a.times(-2));
  }

  @Test
  void division_by_zero_is_a_defect() {
    Uncertain one = Uncertain.exact(1);
    assertThrows(IllegalArgumentException.class, () -> one.dividedBy(Uncertain.exact(0)));
  }

  @Test
  void a_difference_counts_beyond_twice_its_uncertainty() {
    Uncertain a = new Uncertain(0, 3);
    assertFalse(a.differsFrom(new Uncertain(10, 4)));
    assertTrue(a.differsFrom(new Uncertain(10.001, 4)));
    assertTrue(a.differsFrom(new Uncertain(-10.001, 4)));
    assertFalse(Uncertain.exact(1).differsFrom(Uncertain.exact(1)));
    assertTrue(Uncertain.exact(1).differsFrom(Uncertain.exact(1.001)));
  }

  @Test
  void goes_through_a_function_by_its_slope() {
    Uncertain squared = Uncertain.through(x -> x * x, new Uncertain(3, 0.1));
    assertEquals(9, squared.value());
    assertEquals(0.6, squared.u(), 1e-9);
    Uncertain product =
        Uncertain.through((x, y) -> x * y, new Uncertain(3, 0.1), new Uncertain(4, 0.2));
    assertEquals(12, product.value());
    assertEquals(Math.hypot(0.4, 0.6), product.u(), 1e-9);
  }

  @Test
  void takes_the_one_sided_slope_at_the_edge_of_a_range() {
    Uncertain atTop = Uncertain.through(b -> Sucrose.density(b, 20), new Uncertain(70, 0.1));
    Uncertain below = Uncertain.through(b -> Sucrose.density(b, 20), new Uncertain(69.9, 0.1));
    assertEquals(below.u(), atTop.u(), 0.01);
    Uncertain atZero = Uncertain.through(b -> Sucrose.density(b, 20), new Uncertain(0, 0.1));
    assertEquals(0.386, atZero.u(), 0.001);
  }

  @Test
  void nonsense_is_a_defect() {
    assertThrows(IllegalArgumentException.class, () -> new Uncertain(1, -0.1));
    assertThrows(IllegalArgumentException.class, () -> new Uncertain(Double.NaN, 0));
    assertThrows(IllegalArgumentException.class, () -> new Uncertain(1, Double.POSITIVE_INFINITY));
  }
}
