package org.barreltally.pricing;

import java.time.LocalDate;
import org.barreltally.refusal.Refusal;

/** No rate of tax was entered for a product class at a place on a day. */
public final class NoTaxRateHolds extends Refusal {
  public NoTaxRateHolds(ProductClass productClass, String place, LocalDate on) {
    super(
        Kind.NOT_FOUND,
        "no-tax-rate-holds",
        "No tax rate holds",
        "No rate for %s was entered at %s that holds on %s. Enter one at /api/tax-rates; 0 percent says that none is due."
            .formatted(productClass.code(), place == null ? "no place" : shown(place), on));
  }
}
