package org.barreltally.measure;

import org.barreltally.refusal.Refusal;

/** A reading made at a temperature for which the instrument cannot be corrected. */
public final class OutsideInstrumentRange extends Refusal {
  private final double celsius;

  /**
   * @param instrument its name, as the sentence begins: {@code A hydrometer}
   * @param mend what to do, a sentence
   */
  OutsideInstrumentRange(
      String instrument, double celsius, double least, double most, String mend) {
    super(
        Kind.RULE,
        "outside-instrument-range",
        "Too cold or too hot to correct",
        "%s reading at %s cannot be corrected, only from %s to %s. %s"
            .formatted(
                instrument,
                Temperatures.inFahrenheit(celsius),
                Temperatures.inFahrenheit(least),
                Temperatures.inFahrenheit(most),
                mend),
        "temperature");
    this.celsius = celsius;
  }

  public double celsius() {
    return celsius;
  }
}
