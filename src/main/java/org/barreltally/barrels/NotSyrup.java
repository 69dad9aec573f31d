package org.barreltally.barrels;

import org.barreltally.measure.Quantity;
import org.barreltally.refusal.Refusal;

/** The reading is of something that is not syrup. */
public final class NotSyrup extends Refusal {
  public NotSyrup(Quantity reading, double brix) {
    super(
        Kind.RULE,
        "not-syrup",
        "That is not syrup",
        "The reading %s comes to %.1f °Bx; a barrel of syrup is between 50 and 70 °Bx. Check reading, unit and temperature."
            .formatted(reading, brix),
        "reading");
  }
}
