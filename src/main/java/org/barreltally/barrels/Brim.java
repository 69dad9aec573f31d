package org.barreltally.barrels;

import org.barreltally.measure.Quantity;
import org.barreltally.measure.Syrup;
import org.barreltally.measure.Uncertain;
import org.barreltally.measure.Unit;

/** What a vessel takes to the brim. */
final class Brim {

  private Brim() {}

  /**
   * Refuses what is over the brim beyond what scale and stick may be off.
   *
   * @param capacityML what the vessel takes; null where nobody said
   * @param field where in the request the amount was named
   * @throws OverCapacity if it does not take that much
   */
  static void check(String tag, Number capacityML, Uncertain grams, double brix, String field) {
    if (capacityML == null) {
      return;
    }
    Syrup syrup = new Syrup(brix);
    double least = Math.max(0, grams.value() - Uncertain.COVERAGE * grams.u());
    if (syrup.mLAt20(least) > capacityML.doubleValue()) {
      throw new OverCapacity(
          tag, gallons(syrup.mLAt20(grams.value())), gallons(capacityML.doubleValue()), field);
    }
  }

  private static Quantity gallons(double milliliters) {
    return Quantity.rounded(milliliters, Unit.ML, 0).to(Unit.GAL, 2);
  }
}
