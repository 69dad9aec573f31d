package org.barreltally.sales.away;

import org.barreltally.refusal.Refusal;

/** More jars of a size were to come back than the sale had and has not returned yet. */
public final class MoreThanSold extends Refusal {
  public MoreThanSold(String container, long open, long wanted, String field) {
    super(
        Kind.CONFLICT,
        "more-than-sold",
        "More than this sale had",
        "Of this sale %d × %s can still come back; %d were given. Look for another sale, or count again."
            .formatted(open, container, wanted),
        field);
  }
}
