package org.barreltally.shops;

import org.barreltally.refusal.Refusal;

/** A shop of that code or name is known already. */
public final class ShopExists extends Refusal {
  public ShopExists(String name, String field) {
    super(
        Kind.CONFLICT,
        "shop-exists",
        "That shop is known",
        "%s is taken by a shop that is known already. Use that shop, or another name."
            .formatted(name),
        field);
  }
}
