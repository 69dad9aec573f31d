package org.barreltally.table;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** Nobody waits for a call under that id. */
public final class UnknownLead extends Refusal {

  public UnknownLead(UUID id) {
    super(
        Kind.NOT_FOUND,
        "unknown-lead",
        "Nobody waits under that id",
        "Nobody was noted as " + id + ". List who waits at /api/table/leads.");
  }
}
