package org.barreltally.shows;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** No reservation of that id is for this show. */
public final class NoSuchReservation extends Refusal {
  public NoSuchReservation(UUID reservation, Show show) {
    super(
        Kind.NOT_FOUND,
        "unknown-reservation",
        "No such reservation",
        "There is no reservation %s for %s.".formatted(reservation, show.words()));
  }
}
