package org.barreltally.pricing;

import java.time.LocalDate;
import org.barreltally.refusal.Refusal;

/** No list holds for an audience on a day. */
public final class NoPriceListHolds extends Refusal {
  public NoPriceListHolds(Audience audience, LocalDate on) {
    super(
        Kind.NOT_FOUND,
        "no-price-list-holds",
        "No price list holds",
        "No %s list holds on %s. Enter one, or ask for another day."
            .formatted(audience.code(), on));
  }
}
