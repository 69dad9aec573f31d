package org.barreltally.supplies;

import org.barreltally.refusal.Refusal;

/** A supply was to be added under a code that is taken. */
public final class SupplyExists extends Refusal {
  public SupplyExists(String code) {
    super(
        Kind.CONFLICT,
        "supply-exists",
        "This code is taken",
        "There is a supply " + code + " already. Choose another code for another supply.",
        "code");
  }
}
