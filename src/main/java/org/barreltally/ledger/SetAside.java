package org.barreltally.ledger;

import org.barreltally.refusal.Refusal;

/**
 * Jars were to be taken from, or carried by hand to, a place where jars stand for gift orders only.
 */
public final class SetAside extends Refusal {
  SetAside(Place place, String field) {
    super(
        Kind.CONFLICT,
        "set-aside",
        "Jars there belong to gift orders",
        ("Jars at %s (%s) come and go by the steps of gift orders: pick, send, return, or take a step back"
                + " there. Name another place.")
            .formatted(place.code(), place.name()),
        field);
  }
}
