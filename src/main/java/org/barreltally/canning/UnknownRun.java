package org.barreltally.canning;

import org.barreltally.refusal.Refusal;

/** No canning run made that lot. */
public final class UnknownRun extends Refusal {
  public UnknownRun(String lot) {
    super(
        Kind.NOT_FOUND,
        "unknown-run",
        "No such run",
        "No canning run made the lot “" + lot + "”. List runs at /api/canning/runs.");
  }
}
