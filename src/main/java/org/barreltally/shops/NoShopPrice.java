package org.barreltally.shops;

import java.time.LocalDate;
import org.barreltally.refusal.Refusal;

/** Jars in a shop have no price to settle them by. */
public final class NoShopPrice extends Refusal {
  public NoShopPrice(String container, String grade, LocalDate on, String field) {
    super(
        Kind.RULE,
        "no-shop-price",
        "No price to settle by",
        "No price list of this shop has a price for %s %s on %s. Enter one, or name another list in the terms."
            .formatted(container, grade, on),
        field);
  }
}
