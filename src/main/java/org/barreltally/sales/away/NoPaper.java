package org.barreltally.sales.away;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** A sale at a table has no invoice. */
public final class NoPaper extends Refusal {
  public NoPaper(UUID sale) {
    super(
        Kind.RULE,
        "no-paper",
        "No invoice for this sale",
        "Sale %s was made at a show's table, where none is numbered. Tell sales that need an invoice as farm, post or wholesale."
            .formatted(sale));
  }
}
