package org.barreltally.shows;

import org.barreltally.refusal.Refusal;

/**
 * Jars were to be packed out from, or carried home to, a place that is not one of the own rooms.
 */
public final class NotAtHome extends Refusal {
  public NotAtHome(String place, String field) {
    super(
        Kind.INVALID,
        "not-at-home",
        "That is no room at home",
        "%s is away from home. Name a room at home, or use transfers between tables."
            .formatted(place),
        field);
  }
}
