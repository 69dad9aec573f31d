package org.barreltally.stock;

import org.barreltally.refusal.Refusal;

/** A count names a cause for jars that are not short. */
public final class NothingShort extends Refusal {
  public NothingShort(StockCount.Line line, String field) {
    super(
        Kind.RULE,
        "nothing-short",
        "No jar is short there",
        "%d × %s of lot %s were counted and the book has %d, so nothing is short. Leave the cause out."
            .formatted(line.counted(), line.container(), line.lot(), line.book()),
        field);
  }
}
