package org.barreltally.barrels;

import org.barreltally.refusal.Refusal;

/** A weighing left the tare out and the book has none. */
public final class TareUnknown extends Refusal {
  public TareUnknown(String tag) {
    super(
        Kind.INVALID,
        "tare-unknown",
        "What does it weigh empty?",
        tag + " was only dipped when it was filled, so its tare is not known. Give the tare.",
        "weighing.tare");
  }
}
