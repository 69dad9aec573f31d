package org.barreltally.gifts;

import org.barreltally.measure.Quantity;

/**
 * What one box weighs ready for the post, as a scale reads in air.
 *
 * @param basis whether boxes were weighed or it is reckoned from jars, syrup and carton
 * @param weighings how many boxes were weighed
 * @param estimate what was reckoned, where boxes were weighed since
 * @param beyondUncertainty whether scale and reckoning differ by more than both may be off
 */
public record PackedWeight(
    Basis basis,
    Quantity weight,
    Quantity standardUncertainty,
    int weighings,
    Quantity estimate,
    Boolean beyondUncertainty) {

  /** Where a packed weight comes from. */
  public enum Basis {
    ESTIMATED,
    WEIGHED;

    /** {@code estimated, weighed}. */
    public String code() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }
}
