package org.barreltally.gifts;

import java.util.List;
import org.barreltally.containers.Container;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Syrup;
import org.barreltally.measure.Uncertain;
import org.barreltally.measure.Unit;

/**
 * What a packed box weighs, in grams as a scale reads in air: reckoned from jars, syrup and
 * wrapping until boxes were weighed. Half widths are taken as rectangular (GUM 4.3.7).
 */
final class BoxWeight {

  /** Syrup of a jar lies within these by law or nearly so, °Bx (21 CFR 168.140; USDA AMS 2015). */
  private static final double LIGHTEST = 66.0;

  private static final double HEAVIEST = 68.9;

  /** A jar that was weighed varies from piece to piece, ± g (common practice). */
  private static final double GLASS_VARIES = 5;

  private static final double OTHERS_VARY = 2;

  /** Grams of an empty jar for each mL it holds, where nobody weighed one (rough, from memory). */
  private static final double GLASS_PER_ML = 0.75;

  private static final double OTHERS_PER_ML = 0.10;
  private static final double GUESS_OFF_BY = 0.4;

  /** A carton with cushioning for each gram of jars, where nobody weighed one (rough). */
  private static final double CARTON_PER_GRAM = 0.25;

  private static final double CARTON_OFF_BY = 0.6;

  /** A carton that was weighed varies by so much of its weight with the cushioning put in. */
  private static final double CUSHIONING_VARIES = 0.1;

  private BoxWeight() {}

  /** A size and how many of it are in the box. */
  record Filled(Container container, int count) {}

  /** Jars, syrup, carton, ribbon and card together. */
  static Uncertain reckoned(List<Filled> jars, Wrapping carton, List<Wrapping> others) {
    Uncertain sum = Uncertain.exact(0);
    for (Filled filled : jars) {
      // Pieces of one size are off together, so their uncertainties add up straight.
      sum = sum.plus(empty(filled.container()).times(filled.count()));
      sum = sum.plus(syrup(filled.container()).times(filled.count()));
    }
    sum = sum.plus(carton(carton, sum.value()));
    for (Wrapping other : others) {
      if (other.weight() != null) {
        double grams = other.weight().doubleIn(Unit.G);
        sum = sum.plus(Uncertain.within(grams, grams * CUSHIONING_VARIES));
      }
    }
    return sum;
  }

  private static Uncertain empty(Container container) {
    boolean glass = container.material() == Container.Material.GLASS;
    Quantity weighed = container.emptyWeight();
    if (weighed != null) {
      return Uncertain.within(weighed.doubleIn(Unit.G), glass ? GLASS_VARIES : OTHERS_VARY);
    }
    double guess = container.netML() * (glass ? GLASS_PER_ML : OTHERS_PER_ML);
    return Uncertain.within(guess, guess * GUESS_OFF_BY);
  }

  private static Uncertain syrup(Container container) {
    double least = weight(container, LIGHTEST);
    double most = weight(container, HEAVIEST);
    return Uncertain.within((least + most) / 2, (most - least) / 2);
  }

  private static double weight(Container container, double brix) {
    Syrup syrup = new Syrup(brix);
    return syrup.weightInAir(syrup.gramsForML20(container.netML()));
  }

  private static Uncertain carton(Wrapping carton, double jars) {
    if (carton == null || carton.weight() == null) {
      double guess = jars * CARTON_PER_GRAM;
      return Uncertain.within(guess, guess * CARTON_OFF_BY);
    }
    double grams = carton.weight().doubleIn(Unit.G);
    return Uncertain.within(grams, grams * CUSHIONING_VARIES);
  }

  /**
   * The mean of boxes that were weighed, with what the scale may be off and how far they scatter.
   *
   * @param grams at least one
   * @param scale ± half width of the scale, g
   */
  static Uncertain weighed(List<Double> grams, double scale) {
    double mean = grams.stream().mapToDouble(g -> g).average().orElseThrow();
    double squares = grams.stream().mapToDouble(g -> (g - mean) * (g - mean)).sum();
    double scatter = grams.size() < 2 ? 0 : Math.sqrt(squares / (grams.size() - 1));
    return new Uncertain(mean, Math.hypot(Uncertain.within(mean, scale).u(), scatter));
  }
}
