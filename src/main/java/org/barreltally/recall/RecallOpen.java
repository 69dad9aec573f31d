package org.barreltally.recall;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** A lot was to be released that is being called back. */
public final class RecallOpen extends Refusal {
  public RecallOpen(String lot, UUID recall) {
    super(
        Kind.CONFLICT,
        "recall-open",
        "This lot is being called back",
        "Lot %s is held by recall %s. End the recall with a reason first; then release the lot."
            .formatted(lot, recall));
  }
}
