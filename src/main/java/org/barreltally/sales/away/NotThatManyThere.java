package org.barreltally.sales.away;

import org.barreltally.refusal.Refusal;

/** More jars of a size were to be sold from a room than stand there, over all lots not held. */
public final class NotThatManyThere extends Refusal {
  public NotThatManyThere(String place, String container, long there, long wanted, String field) {
    super(
        Kind.CONFLICT,
        "short-of-stock",
        "Not that many there",
        "%s holds %d × %s of lots that are not held; %d cannot be sold. Count again or sell fewer."
            .formatted(place, there, container, wanted),
        field);
  }
}
