package org.barreltally.cost.flow;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/**
 * A movement of the book as costs see it.
 *
 * @param kind of the movement; of one that takes another back, of that
 * @param year it is booked in
 * @param day it happened
 * @param takesBack whether it takes an earlier movement back
 */
public record Happening(
    UUID id, String kind, int year, LocalDate day, boolean takesBack, List<Moved> moved) {

  public Happening {
    moved = List.copyOf(moved);
  }

  /**
   * What it did to one item at one place.
   *
   * @param at what kind of place it is
   * @param amount grams or pieces; above zero where they came to the place
   */
  public record Moved(Goods goods, String place, At at, long amount) {}

  /** What a place is to costs. */
  public enum At {
    /** Own rooms, tables, shelves. */
    OWN,
    /** The world beyond the book. */
    OUTSIDE,
    /** Where grams of one thing become another. */
    MAKING
  }
}
