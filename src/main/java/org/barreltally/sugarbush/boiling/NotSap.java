package org.barreltally.sugarbush.boiling;

import org.barreltally.refusal.Refusal;

/** A strength that sap, concentrate or permeate does not have. */
public final class NotSap extends Refusal {
  NotSap(String what, double brix, double least, double most, String field) {
    super(
        Kind.RULE,
        "not-sap",
        "No such sap",
        "%s of %s °Bx is outside %s to %s °Bx. Check the reading; a syrup hydrometer does not read sap."
            .formatted(what, plain(brix), plain(least), plain(most)),
        field);
  }

  private static String plain(double number) {
    return java.math.BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }
}
