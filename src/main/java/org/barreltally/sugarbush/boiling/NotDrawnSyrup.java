package org.barreltally.sugarbush.boiling;

import java.util.Locale;
import org.barreltally.measure.Quantity;
import org.barreltally.refusal.Refusal;

/** The reading of a draw-off is of something that is not syrup. */
public final class NotDrawnSyrup extends Refusal {
  NotDrawnSyrup(Quantity reading, double brix) {
    super(
        Kind.RULE,
        "not-syrup",
        "That is not syrup",
        String.format(
            Locale.ROOT,
            "The reading %s comes to %.1f °Bx; a draw-off of syrup is between 50 and 70 °Bx. Check reading, unit and temperature.",
            reading,
            brix),
        "density.reading");
  }
}
