package org.barreltally.shows.settling;

import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.barreltally.pricing.Money;
import org.barreltally.sales.CountNeeded;
import org.barreltally.shows.ShowState;

/**
 * A show settled. Jars in pieces.
 *
 * @param sold by size, exactly: once counted, what came less what went unsold
 * @param soldByLot at least and at most; equal where the counts tell exactly
 * @param takings all that was taken in: cash kept, card, owing
 * @param cashDue what the drawer should hold: float + cash − change − payouts
 * @param cashOverShort counted less due; null if nobody counted the drawer
 * @param hints what a difference of the drawer equals; nothing was adjusted
 * @param fee flat and percent of takings; of a show that was called off what was paid and not
 *     refunded
 * @param feePaid so far
 * @param feeDue to the organiser still; below zero comes back
 * @param syrupCost at lot cost; null while no lot has a cost
 * @param profit takings less fee, travel, helper and syrup cost where it is known
 * @param unitsPerHour jars sold per hour open; null if the hours are not known
 * @param waitsFor shows it exchanged jars with that are not counted yet: their counts may narrow
 *     soldByLot
 * @param countNeeded what stands below zero at the table
 * @param toLookAt what does not fit together
 */
public record Settlement(
    UUID show,
    ShowState state,
    List<Sold> sold,
    List<SoldLot> soldByLot,
    Money takings,
    TakenIn takenIn,
    Money cashFloat,
    Money cashDue,
    Money cashCounted,
    Money cashOverShort,
    List<String> hints,
    Money fee,
    Money feePaid,
    Money feeDue,
    Money travel,
    Money helper,
    Money syrupCost,
    String syrupCostNote,
    Money profit,
    BigDecimal hours,
    BigDecimal unitsPerHour,
    List<UUID> waitsFor,
    List<CountNeeded> countNeeded,
    List<String> toLookAt,
    UUID movement) {

  /**
   * Jars of one size that were sold.
   *
   * @param recorded in sales
   * @param unrecorded gone by the count without a sale
   * @param beyond sold by the sales beyond what came to the table
   */
  public record Sold(String container, long count, long recorded, long unrecorded, long beyond) {}

  /**
   * Jars of one size and lot that were sold.
   *
   * @param lot null for what was sold beyond all lots that came
   */
  public record SoldLot(String container, String lot, long least, long most) {}

  /**
   * The parts of the takings; {@code unsaid} are totals of sales that do not say how they were
   * paid.
   */
  public record TakenIn(
      Money cash, Money change, Money card, Money owing, Money unsaid, Money tax) {}

  Settlement posted(UUID movement, ShowState state) {
    return new Settlement(
        show,
        state,
        sold,
        soldByLot,
        takings,
        takenIn,
        cashFloat,
        cashDue,
        cashCounted,
        cashOverShort,
        hints,
        fee,
        feePaid,
        feeDue,
        travel,
        helper,
        syrupCost,
        syrupCostNote,
        profit,
        hours,
        unitsPerHour,
        waitsFor,
        countNeeded,
        toLookAt,
        movement);
  }
}
