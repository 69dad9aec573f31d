package org.barreltally.barrels;

import org.barreltally.refusal.Refusal;

/** A vessel was to be filled or washed that still has syrup in it. */
public final class BarrelNotEmpty extends Refusal {
  public BarrelNotEmpty(String tag, String lot, String field) {
    super(
        Kind.CONFLICT,
        "barrel-not-empty",
        "There is syrup in it",
        tag + " still holds syrup of lot " + lot + ". Draw it off, top it up, or take another tag.",
        field);
  }
}
