package org.barreltally.supplies.rest;

import org.barreltally.supplies.Supply;
import org.barreltally.supplies.SupplyStanding;

/**
 * A supply as the interface shows it.
 *
 * @param onHand pieces; left out where it is not counted yet
 * @param low whether it stands at or under its low line
 */
public record SupplyView(
    String code,
    String name,
    Supply.Kind kind,
    String container,
    Integer perJar,
    Integer jarsEach,
    Long lowLine,
    Long onHand,
    SupplyStanding.State state,
    boolean low) {

  static SupplyView of(SupplyStanding standing) {
    Supply supply = standing.supply();
    return new SupplyView(
        supply.code(),
        supply.name(),
        supply.kind(),
        supply.container(),
        supply.perJar(),
        supply.jarsEach(),
        supply.lowLine(),
        standing.onHand(),
        standing.state(),
        standing.low());
  }
}
