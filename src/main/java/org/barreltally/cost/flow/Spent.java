package org.barreltally.cost.flow;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;

/**
 * A cost as the reckoning sees it.
 *
 * @param name of what it belongs to
 * @param kind of cost, by its code
 * @param pieces of a container or supply that the amount is for; null else
 * @param year it is booked in
 * @param takenBackIn year its reversal is booked in; null while it stands
 */
public record Spent(
    UUID id,
    Contribution.Of of,
    String name,
    String kind,
    LocalDate on,
    BigDecimal amount,
    Integer pieces,
    int year,
    Integer takenBackIn) {

  /** Whether it counts by the end of a year. */
  boolean standsIn(int asOf) {
    return year <= asOf && (takenBackIn == null || takenBackIn > asOf);
  }
}
