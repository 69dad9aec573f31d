package org.barreltally.table;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** Nothing of that id left the table. */
public final class UnknownLoss extends Refusal {

  public UnknownLoss(UUID id) {
    super(
        Kind.NOT_FOUND,
        "unknown-loss",
        "Nothing of the kind",
        "No jars were noted as broken, tasted or given at this table under " + id + ".");
  }
}
