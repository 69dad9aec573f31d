package org.barreltally.netcontents;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** The lot has no check of that id. */
public final class UnknownNetContentsCheck extends Refusal {
  public UnknownNetContentsCheck(String lot, UUID id) {
    super(
        Kind.NOT_FOUND,
        "unknown-net-contents-check",
        "No such check",
        "Lot “%s” has no net contents check %s. List them at /api/canning/runs/{lot}/net-contents-checks."
            .formatted(lot, id));
  }
}
