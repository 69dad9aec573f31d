package org.barreltally.shops;

import java.time.LocalDate;
import org.barreltally.refusal.Refusal;

/** A shelf was to be counted for a day before its newest entry. */
public final class ShelfChangedLater extends Refusal {
  public ShelfChangedLater(LocalDate on, LocalDate newest) {
    super(
        Kind.CONFLICT,
        "shelf-changed-later",
        "Something happened since",
        "Jars came, went or were counted on %s, so a count of %s cannot be compared any more. Count again."
            .formatted(newest, on),
        "on");
  }
}
