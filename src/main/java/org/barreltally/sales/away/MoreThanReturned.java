package org.barreltally.sales.away;

import org.barreltally.refusal.Refusal;

/** More jars were inspected than wait for it. */
public final class MoreThanReturned extends Refusal {
  public MoreThanReturned(String container, String lot, long open, long wanted, String field) {
    super(
        Kind.CONFLICT,
        "more-than-returned",
        "More than came back",
        "Of this return %d × %s of lot %s wait for inspection; %d were given. Count again."
            .formatted(open, container, lot, wanted),
        field);
  }
}
