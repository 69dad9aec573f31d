package org.barreltally.measure;

import org.barreltally.refusal.Refusal;

/** A quantity was given in a unit that cannot be turned into the one needed. */
public final class UnitMismatch extends Refusal {
  private final Unit given;
  private final Unit needed;

  public UnitMismatch(Unit given, Unit needed) {
    super(
        Kind.INVALID,
        "unit-mismatch",
        "The unit does not fit",
        "%s cannot be turned into %s. Give a unit of %s."
            .formatted(
                given.code(),
                needed.code(),
                needed.dimension().name().toLowerCase(java.util.Locale.ROOT)),
        "unit");
    this.given = given;
    this.needed = needed;
  }

  public Unit given() {
    return given;
  }

  public Unit needed() {
    return needed;
  }
}
