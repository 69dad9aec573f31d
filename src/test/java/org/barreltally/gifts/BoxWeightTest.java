package org.barreltally.gifts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.barreltally.containers.Container;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Uncertain;
import org.barreltally.measure.Unit;
import org.junit.jupiter.api.Test;

/**
 * What a packed box weighs. Worked by hand: two half-pint glasses of 0.40 lb with 314.0 g (0.692
 * lb) of syrup each at 66.9 °Bx, and 0.6 lb of carton and cushioning, are 2 × 1.092 + 0.6 = 2.78
 * lb; practice notes say "about 2.8 lb".
 */
class BoxWeightTest {

  private static final double POUND = 453.59237;
  private static final Wrapping CARTON = new Wrapping("Carton", Quantity.of("0.6", Unit.LB));

  private static Container half(Quantity empty) {
    return new Container(
        "HG", "Half-pint glass", Quantity.of(8, Unit.FLOZ), null, empty, Container.Material.GLASS);
  }

  private static Uncertain reckoned(Quantity empty, Wrapping carton) {
    return BoxWeight.reckoned(List.of(new BoxWeight.Filled(half(empty), 2)), carton, List.of());
  }

  @Test
  void two_half_pint_glasses_in_a_carton_weigh_what_they_do_by_hand() {
    Uncertain weight = reckoned(Quantity.of("0.40", Unit.LB), CARTON);
    assertEquals(2.78, weight.value() / POUND, 0.015);
    assertTrue(weight.u() < 0.06 * POUND, "known to about an ounce: " + weight.u());
  }

  @Test
  void what_nobody_weighed_is_guessed_and_said_to_be_uncertain() {
    Uncertain guessed = reckoned(null, null);
    assertEquals(2.78 * POUND, guessed.value(), 2 * guessed.u());
    assertTrue(guessed.u() > 3 * reckoned(Quantity.of("0.40", Unit.LB), CARTON).u());
  }

  @Test
  void boxes_on_the_scale_give_their_mean_and_scatter() {
    Uncertain weighed = BoxWeight.weighed(List.of(1260.0, 1270.0, 1280.0), 1);
    assertEquals(1270, weighed.value(), 1e-9);
    // Scatter of ±10 about the mean, n − 1 = 2: s = 10; the scale adds 1/√3.
    assertEquals(Math.hypot(10, 1 / Math.sqrt(3)), weighed.u(), 1e-9);
  }
}
