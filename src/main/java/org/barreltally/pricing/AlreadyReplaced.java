package org.barreltally.pricing;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** A list was to be replaced that has a newer version. */
public final class AlreadyReplaced extends Refusal {

  /**
   * @param by its newer version; null where it is only just being entered by somebody else
   */
  public AlreadyReplaced(PriceList list, UUID by) {
    super(
        Kind.CONFLICT,
        "already-replaced",
        "There is a newer version",
        "“%s”, version %d, was replaced%s. Read the newest version and replace that one."
            .formatted(list.name(), list.version(), by == null ? " just now" : " by " + by),
        "replaces");
  }
}
