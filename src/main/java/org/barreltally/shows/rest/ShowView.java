package org.barreltally.shows.rest;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.Instant;
import java.util.UUID;
import org.barreltally.shows.Booking;
import org.barreltally.shows.Show;
import org.barreltally.shows.ShowState;

/**
 * A show as it is listed; what is booked stands beside its state.
 *
 * @param place the code of its table as a place of the ledger
 * @param version also the ETag, for If-Match of a later change
 */
public record ShowView(
    UUID id,
    String code,
    String place,
    ShowState state,
    @JsonUnwrapped Booking booking,
    int version,
    Instant changedAt) {

  static ShowView of(Show show) {
    return new ShowView(
        show.id(),
        show.code(),
        show.place(),
        show.state(),
        show.booking(),
        show.version(),
        show.changedAt());
  }
}
