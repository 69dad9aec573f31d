package org.barreltally.sugarbush.boiling;

import java.time.LocalDate;
import java.util.UUID;
import org.barreltally.measure.Uncertain;

/**
 * Concentrate as it stands in the log.
 *
 * @param permeate its °Brix; null if it was not read
 * @param shortTank the one the sap came from, if by the log it holds less than nothing at the day's
 *     end; else null
 * @param reversed null while it counts
 */
public record Concentrate(
    UUID id,
    int season,
    LocalDate on,
    MakeConcentrate said,
    Amount taken,
    Amount made,
    Uncertain permeate,
    ShortTank shortTank,
    Reversed reversed) {

  /** Sugar that went in and did not come out, grams; below zero within the readings' doubt. */
  public Uncertain lost() {
    return taken.sugar().minus(made.sugar());
  }

  /** Water taken out, grams. */
  public Uncertain water() {
    return taken.grams().minus(made.grams());
  }

  /** Sugar in that water, grams; null if its strength was not read. */
  public Uncertain inPermeate() {
    return permeate == null ? null : water().times(permeate.times(1.0 / 100));
  }

  /**
   * What is lost and not in the permeate, grams; without a reading of it, all that is lost. The
   * water's mass goes back to the same gauges; beside the sugar's own doubt that is nothing.
   */
  public Uncertain unexplained() {
    return permeate == null ? lost() : lost().minus(inPermeate());
  }

  /** Whether more is lost or won than the readings leave in doubt. */
  public boolean isBeyondDoubt() {
    return unexplained().differsFrom(Uncertain.exact(0));
  }
}
