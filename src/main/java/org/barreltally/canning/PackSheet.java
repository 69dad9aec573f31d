package org.barreltally.canning;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Quantity;

/**
 * The answer to a what-if and the record of a run. Weights are as a scale reads in air, volumes at
 * 68 °F (20 °C) unless they say otherwise.
 *
 * @param lot the lot made; null in a what-if
 * @param grade from the measured transmittance and the taste; null when they are not given
 * @param brix true Brix after the water
 * @param cautions what to mind at the canner and what would keep a what-if from being run
 */
public record PackSheet(
    String lot,
    LocalDate on,
    ColorClass grade,
    BigDecimal brix,
    BigDecimal transmittance,
    List<Integer> seasons,
    Blended blend,
    List<Filled> fills,
    KeptHeel heel,
    Shrink shrink,
    boolean withinDensityLimits,
    String releaseReason,
    List<String> cautions) {

  /**
   * @param thermalShrinkPercent 100 (1 − volumeAt68F / volumeAtFill)
   * @param transmittanceEstimate in %Tc by absorbance; an estimate, never a grade; null when a part
   *     was not measured
   * @param standardUncertainty of the mass
   */
  public record Blended(
      Quantity weight,
      Quantity mass,
      BigDecimal brix,
      Quantity volumeAt68F,
      Quantity volumeAtFill,
      BigDecimal thermalShrinkPercent,
      Quantity waterToAdd,
      BigDecimal transmittanceEstimate,
      Quantity standardUncertainty) {}

  /**
   * @param fillWeight of the nominal contents in grams in air
   * @param hotFillVolume of the nominal contents at the filling temperature, mL: the fill mark
   * @param unitsPossible how many of this size alone the blend would fill
   */
  public record Filled(
      String container,
      Quantity netContents,
      Quantity fillWeight,
      Quantity hotFillVolume,
      int count,
      int broken,
      int unitsPossible) {}

  public record KeptHeel(Quantity weight, Quantity volumeAt68F, String keptIn) {}

  /**
   * @param percent of what came in, water included
   * @param unexplainedBeyondUncertainty whether the unexplained means anything
   */
  public record Shrink(
      Quantity volumeAt68F,
      BigDecimal percent,
      Causes byCause,
      boolean unexplainedBeyondUncertainty,
      Quantity unexplainedStandardUncertainty,
      WithoutBroken withoutBroken) {}

  /** The four add up to the whole; the unexplained may be negative and is never folded in. */
  public record Causes(Quantity filter, Quantity overfill, Quantity broken, Quantity unexplained) {}

  public record WithoutBroken(Quantity volumeAt68F, BigDecimal percent) {}
}
