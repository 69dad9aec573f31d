package org.barreltally.web;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** What the start page shows. The capabilities that hold barrels and stock give it. */
public interface StartPageFigures {

  /**
   * A barrel with syrup in it, or held.
   *
   * @param lot null if it has none
   * @param grade the words of the grade, for example "Amber, Rich"; null if not graded
   * @param state the trade's word: full, opened, drained; heel for what is kept of a run
   * @param weightLb net weight in pounds, shown to a tenth
   * @param gallons volume at 68 °F in US gallons, shown to a hundredth
   * @param brix density in °Bx, shown to a tenth; null if not known
   */
  record BarrelRow(
      String tag,
      String lot,
      String grade,
      String state,
      boolean held,
      BigDecimal weightLb,
      BigDecimal gallons,
      BigDecimal brix) {

    public BarrelRow {
      weightLb = weightLb.setScale(1, RoundingMode.HALF_UP);
      gallons = gallons.setScale(2, RoundingMode.HALF_UP);
      brix = brix == null ? null : brix.setScale(1, RoundingMode.HALF_UP);
    }
  }

  /**
   * Jars of one lot and size at one place.
   *
   * @param grade the words of the grade; null if not graded
   * @param held how many of those on hand are held
   */
  record JarRow(String place, String container, String grade, String lot, long onHand, long held) {}

  /** The barrels in the order they are shown. */
  List<BarrelRow> barrels();

  /** The jars in the order they are shown. */
  List<JarRow> jars();
}
