package org.barreltally.bulk;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** No bulk sale has that id. */
public final class UnknownBulkSale extends Refusal {
  public UnknownBulkSale(UUID id) {
    super(
        Kind.NOT_FOUND,
        "unknown-bulk-sale",
        "No such bulk sale",
        "There is no bulk sale " + id + ". List them at /api/bulk-sales.");
  }
}
