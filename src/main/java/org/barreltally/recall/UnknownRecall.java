package org.barreltally.recall;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** The address names a recall that there is not. */
public final class UnknownRecall extends Refusal {
  public UnknownRecall(UUID id) {
    super(
        Kind.NOT_FOUND,
        "unknown-recall",
        "No such recall",
        "There is no recall " + id + ". List them at /api/recalls.");
  }
}
