package org.barreltally.sugarbush;

import org.barreltally.refusal.Refusal;

/** No lease has that id. */
public final class UnknownLease extends Refusal {
  public UnknownLease(String id) {
    super(
        Kind.NOT_FOUND,
        "unknown-lease",
        "No such lease",
        "There is no lease %s. List them at /api/leases.".formatted(id));
  }
}
