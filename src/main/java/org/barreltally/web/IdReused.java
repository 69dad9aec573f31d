package org.barreltally.web;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** The id of an earlier request came again with other content. */
public final class IdReused extends Refusal {

  public IdReused(UUID key) {
    super(
        Kind.CONFLICT,
        "id-reused",
        "This request id was used before",
        "The Idempotency-Key "
            + key
            + " belongs to an earlier request with other content or another address. Use a new UUID"
            + " for a new request.");
  }
}
