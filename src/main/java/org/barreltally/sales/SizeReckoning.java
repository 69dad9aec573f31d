package org.barreltally.sales;

import java.util.Map;
import org.barreltally.sales.bylot.SoldByLot;

/**
 * What was sold of one size of jar, at all tables that exchanged jars.
 *
 * @param totals by place
 * @param byLot least and most by place and lot
 */
public record SizeReckoning(String container, Map<String, Total> totals, SoldByLot byLot) {

  /**
   * Pieces sold at one table.
   *
   * @param recorded in sales that were not taken back
   * @param byDifference what came less what went unsold; null until the table was counted
   */
  public record Total(long recorded, Long byDifference) {

    /**
     * What was sold: by difference, once the table was counted. A sale is a fact, so never fewer
     * than were recorded.
     */
    public long sold() {
      return byDifference == null ? recorded : Math.max(recorded, byDifference);
    }

    /** Gone without a record of a sale. */
    public long unrecorded() {
      return sold() - recorded;
    }

    /** Sold beyond what can have been there: the pack-out or a sale needs a look. */
    public long beyond() {
      return byDifference == null ? 0 : sold() - byDifference;
    }
  }

  public Total at(String place) {
    return totals.getOrDefault(place, new Total(0, null));
  }
}
