package org.barreltally.documents;

import org.barreltally.refusal.Refusal;

/** Labels were asked for jars of a size that the lot was never packed in. */
public final class NotPackedInContainer extends Refusal {
  NotPackedInContainer(String lot, String container) {
    super(
        Kind.RULE,
        "not-packed-in-container",
        "The lot has no such jars",
        "Lot "
            + lot
            + " was not packed in "
            + container
            + ". See what it has at /api/stock?lot="
            + lot
            + ".",
        "container");
  }
}
