package org.barreltally.barrels;

import org.barreltally.refusal.Refusal;

/** Syrup was to be drawn from, or added to, a vessel that is drained. */
public final class Drained extends Refusal {
  public Drained(String tag, String field) {
    super(
        Kind.CONFLICT,
        "barrel-drained",
        "Nothing is left in it",
        tag + " is drained. Fill it first, or take another.",
        field);
  }
}
