package org.barreltally.ledger;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

/**
 * A movement as it stands in the book.
 *
 * @param bookYear the year it is booked in, by the farm's calendar
 * @param late whether it happened in a year that was closed by then; it is booked in an open one
 * @param reason null where the kind says it all
 * @param reverses the movement it takes back; null if it is no reversal
 * @param reversedBy the movement that took it back; null while it stands
 * @param canBeTakenBack whether a reversal may be tried; it is still refused if what it brought has
 *     left since
 */
public record PostedMovement(
    UUID id,
    MovementKind kind,
    Instant happenedAt,
    Instant recordedAt,
    int bookYear,
    boolean late,
    String reason,
    UUID reverses,
    UUID reversedBy,
    boolean canBeTakenBack,
    List<Entry> entries) {

  public PostedMovement {
    entries = List.copyOf(entries);
  }

  /**
   * What a place gained, or lost, of an item.
   *
   * @param container null for syrup in bulk
   * @param amount below zero where it left
   * @param unit {@code g} for syrup in bulk, {@code piece} for jars
   * @param balanceAfter what stood there afterwards
   */
  public record Entry(
      String place,
      UUID item,
      String lot,
      String container,
      long amount,
      String unit,
      long balanceAfter) {}
}
