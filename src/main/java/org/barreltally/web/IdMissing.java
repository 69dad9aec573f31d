package org.barreltally.web;

import org.barreltally.refusal.Refusal;

/** A request that moves stock or money came without an id of its own. */
public final class IdMissing extends Refusal {

  public IdMissing() {
    super(
        Kind.INVALID,
        "id-missing",
        "The request has no id",
        "Send the header Idempotency-Key with a UUID that is new for each new request and the same"
            + " when the same request is sent again.");
  }
}
