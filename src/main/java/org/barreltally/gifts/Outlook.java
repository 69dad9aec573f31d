package org.barreltally.gifts;

import java.time.LocalDate;
import java.util.List;

/**
 * What an order would need and what there will be, by the days on which its parcels leave.
 *
 * @param canBePromised whether all of it could be reserved this moment
 * @param days each day on which parcels leave, with everything wanted up to then
 * @param substitutes where another jar than the first choice would be taken, by recipient
 * @param lacks what could not be met even on the last day, by recipient
 */
public record Outlook(
    boolean canBePromised, List<Day> days, List<Swap> substitutes, List<Lack> lacks) {

  /** One day. */
  public record Day(LocalDate on, List<Line> items) {}

  /**
   * One size and grade on a day.
   *
   * @param wanted as first choice, up to that day
   * @param available what can be promised now
   * @param booked what shows that begin by then would take and were not promised yet
   * @param planned to be canned by then, where it is to count
   * @param free what is left for this order: available − booked + planned
   * @param lacking of those wanted, after substitutes
   */
  public record Line(
      String container,
      String grade,
      long wanted,
      long available,
      long booked,
      long planned,
      long free,
      long lacking) {}

  /** A recipient who would get something else. */
  public record Swap(int n, Jar wanted, Jar substitute, long count) {}

  /** A recipient for whom something lacks. */
  public record Lack(int n, Jar wanted, long count) {}
}
