package org.barreltally.documents;

import java.math.BigDecimal;

/**
 * A sheet of equal labels in columns and rows. Labels are numbered from 1, along each row from the
 * left, rows from the top.
 *
 * @param unit of the lengths
 * @param marginLeft from the edge of the paper to the first column
 * @param marginTop from the edge of the paper to the first row
 * @param gapAcross between two columns; 0 where they touch
 * @param gapDown between two rows; 0 where they touch
 */
public record LabelSheet(
    String code,
    String name,
    Paper paper,
    LengthUnit unit,
    Integer columns,
    Integer rows,
    BigDecimal marginLeft,
    BigDecimal marginTop,
    BigDecimal labelWidth,
    BigDecimal labelHeight,
    BigDecimal gapAcross,
    BigDecimal gapDown) {

  /** Used where neither the owner nor the request names one. */
  public static final String USUAL = "letter-2x5";

  /** Where the lower left corner of a label stands on the page, in points from the lower left. */
  public record Corner(double x, double y) {}

  public int labelsPerPage() {
    return columns * rows;
  }

  /** In points. */
  public double width() {
    return points(labelWidth);
  }

  /** In points. */
  public double height() {
    return points(labelHeight);
  }

  /** Of one label, in square inches. */
  public double squareInches() {
    return width() * height() / (LengthUnit.IN.points() * LengthUnit.IN.points());
  }

  /**
   * @param index of the label on its page, from 0
   */
  public Corner corner(int index) {
    int column = index % columns;
    int row = index / columns;
    double x = points(marginLeft) + column * (width() + points(gapAcross));
    double top = points(marginTop) + row * (height() + points(gapDown));
    return new Corner(x, paper.height() - top - height());
  }

  /** How far the columns reach from the left edge of the paper, in points. */
  double reachAcross() {
    return points(marginLeft) + columns * width() + (columns - 1) * points(gapAcross);
  }

  /** How far the rows reach from the top edge of the paper, in points. */
  double reachDown() {
    return points(marginTop) + rows * height() + (rows - 1) * points(gapDown);
  }

  private double points(BigDecimal length) {
    return length.doubleValue() * unit.points();
  }
}
