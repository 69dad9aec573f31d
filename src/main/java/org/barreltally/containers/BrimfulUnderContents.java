package org.barreltally.containers;

import org.barreltally.measure.Quantity;
import org.barreltally.refusal.Refusal;

/** A container is said to hold less to the brim than its nominal contents. */
public final class BrimfulUnderContents extends Refusal {
  public BrimfulUnderContents(Quantity brimful, Quantity netContents) {
    super(
        Kind.RULE,
        "brimful-under-contents",
        "The brim is under the contents",
        "Filled to the brim it takes %s, less than its contents of %s. Check both, and their units."
            .formatted(brimful, netContents),
        "brimful");
  }
}
