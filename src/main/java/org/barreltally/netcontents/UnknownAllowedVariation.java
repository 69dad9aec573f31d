package org.barreltally.netcontents;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** No allowed variation has that id. */
public final class UnknownAllowedVariation extends Refusal {
  public UnknownAllowedVariation(UUID id) {
    super(
        Kind.NOT_FOUND,
        "unknown-allowed-variation",
        "No such allowed variation",
        "There is no allowed variation %s. List them at /api/net-contents/allowed-variations."
            .formatted(id));
  }
}
