package org.barreltally.start;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import java.time.Instant;
import java.time.LocalDate;
import org.barreltally.ledger.Days;
import org.barreltally.settings.FarmSettings;
import org.barreltally.settings.SupplyShortage;
import org.barreltally.supplies.SuppliesRule;

/** Supplies follow what the owner has set: as it stood at the end of the run's day, or now. */
class OwnersSuppliesRule {

  @Produces
  @ApplicationScoped
  SuppliesRule rule(FarmSettings settings, Days days) {
    return on -> refuses(on, settings, days);
  }

  private static boolean refuses(LocalDate on, FarmSettings settings, Days days) {
    Instant now = days.now();
    Instant over = days.beginning(on.plusDays(1));
    Instant judged = over.isAfter(now) ? now : over.minusNanos(1_000);
    return settings.at(judged).said().suppliesRule() == SupplyShortage.REFUSE;
  }
}
