package org.barreltally.pricing;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** An address names a tax rate that there is none of. */
public final class UnknownTaxRate extends Refusal {
  public UnknownTaxRate(UUID id) {
    super(
        Kind.NOT_FOUND,
        "unknown-tax-rate",
        "No such tax rate",
        "There is no tax rate " + id + ". List them at /api/tax-rates.");
  }
}
