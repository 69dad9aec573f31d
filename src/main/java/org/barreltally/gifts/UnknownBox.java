package org.barreltally.gifts;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** No gift box has that id. */
public final class UnknownBox extends Refusal {
  public UnknownBox(UUID id) {
    super(
        Kind.NOT_FOUND,
        "unknown-box",
        "No such gift box",
        "There is no gift box " + id + ". GET /api/gift-boxes lists them.");
  }
}
