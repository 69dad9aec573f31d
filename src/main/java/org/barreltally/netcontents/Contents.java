package org.barreltally.netcontents;

import org.barreltally.containers.Container;
import org.barreltally.measure.Dimension;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Syrup;
import org.barreltally.measure.Unit;

/** What a container ought to hold, of the syrup that is in it. */
record Contents(Container container, Syrup syrup) {

  /** What the nominal contents weigh in air, g. */
  double nominalGrams() {
    return grams(container.netContents());
  }

  /** A weight in air as it stands, a volume at 20 °C as its weight in air, g. */
  double grams(Quantity quantity) {
    return quantity.unit().dimension() == Dimension.MASS
        ? quantity.doubleIn(Unit.G)
        : syrup.weightInAir(syrup.gramsForML20(quantity.doubleIn(Unit.ML)));
  }
}
