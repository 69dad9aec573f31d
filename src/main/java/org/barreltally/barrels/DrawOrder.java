package org.barreltally.barrels;

import org.barreltally.measure.Quantity;

/**
 * What is said of a draw: a barrel or a heel vessel, and all of it or a weight as a scale reads in
 * air.
 */
public record DrawOrder(String barrel, String vessel, Boolean all, Quantity weight) {

  String tag() {
    return barrel != null ? barrel : vessel;
  }

  String tagField() {
    return barrel != null || vessel == null ? "barrel" : "vessel";
  }
}
