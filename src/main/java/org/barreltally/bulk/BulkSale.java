package org.barreltally.bulk;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.barrels.Material;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Taste;
import org.barreltally.pricing.Money;

/**
 * A barrel sold whole, as it was told; names of people are not in it.
 *
 * @param buyer whose name is kept elsewhere
 * @param movement that took the syrup out of the book
 * @param amount what is paid: the agreed weight at the agreed grade's price
 */
public record BulkSale(
    UUID id,
    LocalDate on,
    String tag,
    String lot,
    UUID buyer,
    UUID movement,
    Syrup syrup,
    Figures ours,
    Figures theirs,
    Figures agreed,
    Money amount,
    Variance variance,
    BookDifference bookDifference,
    List<String> cautions) {

  /**
   * What the book knows of the syrup.
   *
   * @param brix true, at 20 °C
   * @param transmittance %Tc at the newest grading; null if it was never measured
   * @param taste at the newest grading; null if nobody tasted it
   * @param material of the barrel
   */
  public record Syrup(
      List<Integer> seasons,
      BigDecimal brix,
      Double transmittance,
      Taste taste,
      Material material) {}

  /**
   * Our weight above the book's (below zero: under it); it went to the unexplained.
   *
   * @param weight in lb, as a scale reads in air
   */
  public record BookDifference(Quantity weight, boolean beyondUncertainty) {}
}
