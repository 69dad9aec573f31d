package org.barreltally.shops;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** Nothing of that id came to the shop, or it was taken back. */
public final class UnknownDelivery extends Refusal {
  public UnknownDelivery(UUID id) {
    super(
        Kind.NOT_FOUND,
        "unknown-delivery",
        "No such delivery",
        "Nothing of the id %s came to this shop, or it was taken back. See its statement for those that count."
            .formatted(id));
  }
}
