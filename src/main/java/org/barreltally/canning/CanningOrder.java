package org.barreltally.canning;

import java.time.LocalDate;
import java.util.List;
import org.barreltally.barrels.DrawOrder;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Taste;

/**
 * What is said of a canning run, thought of or done.
 *
 * @param on the day
 * @param targetBrix true Brix to thin the blend to; null leaves the blend as it is
 * @param fillTemperature of the syrup when it is filled and capped
 * @param filterHoldUp what stayed in the filter press, as a scale reads in air; null for nothing
 * @param overfill what goes into each jar over its nominal contents, in air; null for nothing
 * @param heel what was left and where it is kept; null for nothing
 * @param transmittance %Tc measured on the finished syrup; needed for a run
 * @param taste of the finished syrup; needed for a run
 * @param releaseReason why a run below the capping temperature or off the density limits is
 *     released all the same; null otherwise
 */
public record CanningOrder(
    LocalDate on,
    List<DrawOrder> draws,
    Double targetBrix,
    Quantity fillTemperature,
    Quantity filterHoldUp,
    Quantity overfill,
    List<FillOrder> fills,
    HeelOrder heel,
    Double transmittance,
    Taste taste,
    String releaseReason) {

  /**
   * A size to fill.
   *
   * @param count good jars
   * @param broken filled and broken, on top of the good ones; null for none
   * @param rest in a what-if: fill this size with what is left
   */
  public record FillOrder(String container, Integer count, Integer broken, Boolean rest) {
    boolean takesTheRest() {
      return Boolean.TRUE.equals(rest);
    }

    int brokenOrNone() {
      return broken == null ? 0 : broken;
    }
  }

  /** What was left of the run, weighed in air, and the tag of the vessel that keeps it. */
  public record HeelOrder(Quantity weight, String keptIn) {}
}
