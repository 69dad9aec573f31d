package org.barreltally.shares;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.measure.Quantity;
import org.barreltally.pricing.Money;
import org.barreltally.sugarbush.Lease;

/**
 * What a landowner is owed for a season and got. owed + carried in − delivered = carried.
 *
 * @param taps the count that is paid for
 * @param owed rent: taps × rate
 * @param owedVolume the rent in gallons at the agreed price, at 68 °F; null where none is agreed
 * @param carried still owed, or below zero handed over too much
 * @param deliveredListValue what the jars would have cost others on their days; null where not all
 *     had a price
 */
public record ShareStatement(
    Lease lease,
    int taps,
    Money owed,
    Quantity owedVolume,
    List<CarriedIn> carriedIn,
    List<Line> delivered,
    Money deliveredValue,
    Quantity deliveredVolume,
    Money carried,
    Quantity carriedVolume,
    Money deliveredListValue) {

  public ShareStatement {
    carriedIn = List.copyOf(carriedIn);
    delivered = List.copyOf(delivered);
  }

  /** What was left of an earlier season. */
  public record CarriedIn(int season, Money value, Quantity volume) {}

  /**
   * Jars of one lot and size.
   *
   * @param delivery the hand-over they were part of
   * @param movement by which they left, for taking it back
   * @param value by the lease's basis
   * @param listPrice of one on the day; null where no list named it
   */
  public record Line(
      UUID delivery,
      UUID movement,
      LocalDate on,
      String container,
      String grade,
      String lot,
      long count,
      Quantity volume,
      Money value,
      Money listPrice,
      Money listValue) {}
}
