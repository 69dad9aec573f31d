package org.barreltally.reconciliation.internal;

import jakarta.enterprise.context.ApplicationScoped;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;

/** Weights as papers keep them. */
@ApplicationScoped
class WeightText {

  /** Grams in air; null if there is no value. */
  Double grams(String value, String unit) {
    return value == null || unit == null
        ? null
        : (Double) Quantity.of(value, Unit.of(unit)).doubleIn(Unit.G);
  }
}
