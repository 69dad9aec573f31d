package org.barreltally.sugarbush.boiling;

import org.barreltally.measure.Uncertain;

/**
 * A tank that by the log gave more than went in. It is flagged and never refused: gauges are rough,
 * and what was boiled, was boiled.
 *
 * @param missing mL at 20 °C, above zero
 */
public record ShortTank(String tank, Uncertain missing) {

  /** Whether that is more than the gauges leave in doubt. */
  public boolean isBeyondDoubt() {
    return missing.differsFrom(Uncertain.exact(0));
  }

  /** The flag in a sentence. */
  public String inWords() {
    return isBeyondDoubt()
        ? "By the log tank %s gave more than went in, beyond what gauges leave in doubt: something was not entered, or a reading is off."
            .formatted(tank)
        : "By the log tank %s gave a little more than went in, within what gauges leave in doubt."
            .formatted(tank);
  }
}
