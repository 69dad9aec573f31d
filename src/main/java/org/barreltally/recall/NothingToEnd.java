package org.barreltally.recall;

import org.barreltally.refusal.Refusal;

/** A recall was to be ended that is not open. */
public final class NothingToEnd extends Refusal {
  public NothingToEnd(Recall recall) {
    super(
        Kind.CONFLICT,
        "nothing-to-end",
        "This recall is not open",
        recall.rehearsal()
            ? "Recall " + recall.id() + " was a rehearsal and held nothing."
            : "Recall %s ended at %s: %s"
                .formatted(recall.id(), recall.end().at(), recall.end().reason()));
  }
}
