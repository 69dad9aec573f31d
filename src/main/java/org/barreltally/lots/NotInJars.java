package org.barreltally.lots;

import org.barreltally.refusal.Refusal;

/** Syrup in bulk has no jar whose code could lead to a page. */
public final class NotInJars extends Refusal {

  public NotInJars(String lot) {
    super(
        Kind.RULE,
        "not-in-jars",
        "Not in jars",
        "Lot " + lot + " is syrup in bulk. Only lots in jars have a page that a label leads to.",
        "lot");
  }
}
