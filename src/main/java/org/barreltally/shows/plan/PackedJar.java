package org.barreltally.shows.plan;

import org.barreltally.containers.Container;
import org.barreltally.measure.Syrup;
import org.barreltally.measure.Unit;

/**
 * What a filled jar weighs.
 *
 * @param kg filled, with its cap
 * @param emptyIsGuessed whether nobody said what it weighs empty
 */
record PackedJar(double kg, boolean emptyIsGuessed) {

  /** Syrup as it is usually packed; a degree more or less is under half a percent of weight. */
  private static final Syrup SYRUP = new Syrup(66.9);

  /** A half-pint jar of 0.40 lb over 314 g of syrup; common practice, as is the other share. */
  private static final double GLASS_OVER_SYRUP = 0.58;

  private static final double OTHER_OVER_SYRUP = 0.08;

  static PackedJar of(Container container) {
    double syrup = SYRUP.gramsForML20(container.netML());
    if (container.emptyWeight() != null) {
      return new PackedJar((syrup + container.emptyWeight().doubleIn(Unit.G)) / 1000, false);
    }
    boolean glass = container.material() == Container.Material.GLASS;
    return new PackedJar(syrup * (1 + (glass ? GLASS_OVER_SYRUP : OTHER_OVER_SYRUP)) / 1000, true);
  }
}
