package org.barreltally.documents;

import java.util.Locale;

/** In what the lengths of a label sheet are given. The inch is exactly 25.4 mm. */
public enum LengthUnit {
  IN(72),
  MM(LengthUnit.POINTS_PER_MM);

  static final double POINTS_PER_MM = 72 / 25.4;

  private final double points;

  LengthUnit(double points) {
    this.points = points;
  }

  /** {@code in, mm}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Points of 1/72 inch in one of it. */
  public double points() {
    return points;
  }
}
