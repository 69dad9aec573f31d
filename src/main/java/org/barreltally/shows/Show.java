package org.barreltally.shows;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;

/**
 * A show as it stands.
 *
 * @param code also the code of its table as a place of the ledger, see {@link #place()}
 * @param boundFrom from when its helper, vehicle and kit are bound: the set-up or the first day
 * @param boundTo the end of its last day
 * @param version grows with every change of the record
 * @param sequence grows with every change of what stands in the calendar
 */
public record Show(
    UUID id,
    String code,
    ShowState state,
    Booking booking,
    Instant boundFrom,
    Instant boundTo,
    int version,
    int sequence,
    Instant changedAt) {

  /** The code of its table as a place of the ledger. */
  public String place() {
    return code;
  }

  public String name() {
    return booking.name();
  }

  public String town() {
    return booking.town();
  }

  public LocalDate starts() {
    return booking.starts();
  }

  public LocalDate ends() {
    return booking.ends();
  }

  /** Name and days, as a sentence names it. */
  public String words() {
    return starts().equals(ends())
        ? "%s on %s".formatted(name(), starts())
        : "%s from %s to %s".formatted(name(), starts(), ends());
  }

  /** Whether the two share a moment between set-up and the end of the last day. */
  public boolean overlaps(Show other) {
    return boundFrom.isBefore(other.boundTo) && other.boundFrom.isBefore(boundTo);
  }
}
