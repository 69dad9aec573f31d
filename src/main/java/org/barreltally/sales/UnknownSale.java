package org.barreltally.sales;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** No sale has that id. */
public final class UnknownSale extends Refusal {
  public UnknownSale(UUID id) {
    super(
        Kind.NOT_FOUND,
        "unknown-sale",
        "No such sale",
        "No sale " + id + " was told. Look it up at its table, or send the sale first.");
  }
}
