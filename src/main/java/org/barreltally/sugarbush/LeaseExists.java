package org.barreltally.sugarbush;

import org.barreltally.refusal.Refusal;

/** These trees are leased for that season already. */
public final class LeaseExists extends Refusal {
  public LeaseExists(Lease lease) {
    super(
        Kind.CONFLICT,
        "lease-exists",
        "That lease is known",
        "%s's %s is leased for %d already. Agree other terms with it at /api/leases/%s/terms."
            .formatted(lease.landowner().name(), lease.bush(), lease.season(), lease.id()),
        "season");
  }
}
