package org.barreltally.gifts;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** No gift order has that id. */
public final class UnknownGiftOrder extends Refusal {
  public UnknownGiftOrder(UUID id) {
    super(
        Kind.NOT_FOUND,
        "unknown-gift-order",
        "No such gift order",
        "There is no gift order " + id + ". GET /api/gift-orders lists them.");
  }
}
