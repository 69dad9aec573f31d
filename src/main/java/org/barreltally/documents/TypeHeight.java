package org.barreltally.documents;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.ReferenceTable;
import org.barreltally.measure.Unit;

/**
 * The least height of the net contents by the area of the principal display panel, from {@code
 * db/reference/net_contents_type_height.csv} (21 CFR 101.7, from memory). In lower case it is the
 * letter o that must have the height (21 CFR 101.7(h), from memory), so capitals and figures stand
 * higher.
 */
final class TypeHeight {

  private static final List<CSVRecord> STEPS = ReferenceTable.rows("net_contents_type_height.csv");
  private static final double POINTS_PER_INCH = 72;

  /** A jar taken as a cylinder this many times as high as wide: our assumption, no source. */
  private static final double HIGH_BY_WIDE = 1.5;

  /** Of height times circumference, for a cylinder: 21 CFR 101.1(b). */
  private static final double PANEL_OF_CYLINDER = 0.4;

  private static final double CUBIC_INCHES_PER_GALLON = 231;

  private TypeHeight() {}

  /**
   * @param squareInches of the panel, more than 0
   * @return in points of 1/72 inch
   */
  static double least(double squareInches) {
    for (CSVRecord step : STEPS) {
      String upTo = step.get("area_up_to");
      if (upTo.isEmpty() || squareInches <= Double.parseDouble(upTo)) {
        return ReferenceTable.number(step, "least_height_inches") * POINTS_PER_INCH;
      }
    }
    throw new IllegalStateException("the table of type heights has no last step");
  }

  /** A guess at the panel of a container, square inches, for owners who did not measure theirs. */
  static double guessedPanel(Quantity netContents) {
    double volume = netContents.doubleIn(Unit.GAL) * CUBIC_INCHES_PER_GALLON;
    double wide = Math.cbrt(4 * volume / (Math.PI * HIGH_BY_WIDE));
    return PANEL_OF_CYLINDER * HIGH_BY_WIDE * wide * Math.PI * wide;
  }
}
