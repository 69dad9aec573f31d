package org.barreltally.netcontents;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.barreltally.measure.Quantity;
import org.barreltally.settings.NetContentsRegime;

/**
 * A check as it is answered and kept. Weights are in grams as a scale reads in air.
 *
 * @param nominal contents on the label, at 68 °F (20 °C)
 * @param nominalWeight what they weigh at the lot's Brix
 * @param standardDeviation of the sample, with n − 1
 * @param factor of the average test for that many jars: t / √n
 * @param averageMargin mean − nominal weight + factor × standard deviation; passes if not negative
 * @param shortest the least of the weights
 * @param tolerance how much one jar may be short: T in the European manner, the allowed variation
 *     in the US one; null where none was entered
 * @param toleranceWeight the same in grams
 * @param beyondTolerance how many jars are short by more; null where it is not known
 * @param beyondToleranceAllowed how many may be
 * @param beyondTwice how many are short by more than twice the tolerance; European manner only
 * @param individual how the test of single jars came out
 * @param individualWords why, in a sentence
 * @param weighing how far the scale may be off
 * @param suggestHold whether the lot had better be held
 * @param why the words for the hold; null if none is suggested
 */
public record NetContentsCheck(
    UUID id,
    String lot,
    String container,
    NetContentsRegime regime,
    int lotSize,
    int sampleSize,
    Quantity nominal,
    Quantity nominalWeight,
    Quantity mean,
    Quantity standardDeviation,
    BigDecimal factor,
    Quantity averageMargin,
    Verdict average,
    Quantity shortest,
    Quantity tolerance,
    Quantity toleranceWeight,
    Integer beyondTolerance,
    Integer beyondToleranceAllowed,
    Integer beyondTwice,
    Verdict individual,
    String individualWords,
    Weighing weighing,
    boolean suggestHold,
    String why,
    List<String> cautions,
    List<BigDecimal> netWeights,
    Instant checkedAt) {

  /**
   * How far the bench scale may be off, which is the same for every jar and is not made smaller by
   * weighing more of them.
   *
   * @param standardUncertainty half width of the setting divided by √3 (GUM 4.3.7), g
   * @param averageWithin whether the average test might have come out otherwise on a better scale:
   *     its margin is no more than twice the standard uncertainty
   */
  public record Weighing(Quantity standardUncertainty, boolean averageWithin) {}
}
