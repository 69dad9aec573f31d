package org.barreltally.shares;

import org.barreltally.refusal.Refusal;
import org.barreltally.sugarbush.Lease;

/** These trees are not leased for the season that was asked for. */
public final class NoLeaseThatSeason extends Refusal {
  public NoLeaseThatSeason(Lease lease, int season) {
    super(
        Kind.NOT_FOUND,
        "no-lease-that-season",
        "Not leased that season",
        "%s's %s is leased for %d; there is no lease for %d. List them at /api/leases."
            .formatted(lease.landowner().name(), lease.bush(), lease.season(), season));
  }
}
