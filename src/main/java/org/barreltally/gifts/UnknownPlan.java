package org.barreltally.gifts;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** No planned canning has that id, or it was withdrawn. */
public final class UnknownPlan extends Refusal {
  public UnknownPlan(UUID id) {
    super(
        Kind.NOT_FOUND,
        "unknown-planned-canning",
        "No such plan",
        "There is no planned canning " + id + ", or it was withdrawn.");
  }
}
