package org.barreltally.people;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** No token with this id belongs to the person who asks, or it was revoked before. */
public final class UnknownToken extends Refusal {

  public UnknownToken(UUID id) {
    super(
        Kind.NOT_FOUND,
        "unknown-token",
        "No such token",
        "You have no token " + id + "; GET /api/tokens lists those you have.");
  }
}
