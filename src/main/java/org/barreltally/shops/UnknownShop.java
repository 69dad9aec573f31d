package org.barreltally.shops;

import org.barreltally.refusal.Refusal;

/** No shop has that code. */
public final class UnknownShop extends Refusal {
  public UnknownShop(String code) {
    super(
        Kind.NOT_FOUND,
        "unknown-shop",
        "No such shop",
        "There is no shop %s. List them at /api/shops.".formatted(code));
  }
}
