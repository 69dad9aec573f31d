package org.barreltally.documents;

import java.util.Locale;

/** Sizes of paper, in points of 1/72 inch. ISO 216 for A4; ANSI/ASME Y14.1 size A for letter. */
public enum Paper {
  LETTER(612, 792),
  A4(210 * LengthUnit.POINTS_PER_MM, 297 * LengthUnit.POINTS_PER_MM);

  private final double width;
  private final double height;

  Paper(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** {@code letter, a4}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** In points. */
  public double width() {
    return width;
  }

  /** In points. */
  public double height() {
    return height;
  }
}
