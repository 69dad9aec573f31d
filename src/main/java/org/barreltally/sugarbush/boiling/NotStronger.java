package org.barreltally.sugarbush.boiling;

import org.barreltally.refusal.Refusal;

/** A membrane makes less volume of more strength; something else was read. */
public final class NotStronger extends Refusal {
  NotStronger(String what, String field) {
    super(
        Kind.RULE,
        "concentrate-not-stronger",
        "That is not concentrate",
        "Concentrate has " + what + " than the sap it was made of. Check both readings.",
        field);
  }
}
