package org.barreltally.barrels;

import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.PlaceCode;

/** Where the syrup of a filling came from. */
public enum Origin {
  BOILED(PlaceCode.BOILED, MovementKind.FILLING),
  BOUGHT(PlaceCode.BOUGHT, MovementKind.PURCHASE),
  /** It was there when the book began. */
  OPENING(PlaceCode.OPENING, MovementKind.OPENING);

  private final String place;
  private final MovementKind kind;

  Origin(String place, MovementKind kind) {
    this.place = place;
    this.kind = kind;
  }

  String place() {
    return place;
  }

  MovementKind movement() {
    return kind;
  }
}
