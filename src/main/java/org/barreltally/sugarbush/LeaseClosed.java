package org.barreltally.sugarbush;

import org.barreltally.refusal.Refusal;

/** A lease was closed at its season's end; what was left of it went on. */
public final class LeaseClosed extends Refusal {
  public LeaseClosed(Lease lease) {
    super(
        Kind.CONFLICT,
        "lease-closed",
        "The lease is closed",
        "The lease of %s for %d was closed on %s. Record this with the lease of a later season, which carries what was left."
            .formatted(lease.bush(), lease.season(), lease.closedOn()));
  }
}
