package org.barreltally.gifts;

import org.barreltally.refusal.Refusal;

/** Nothing was done with a recipient that could be taken back. */
public final class NothingToUndo extends Refusal {
  public NothingToUndo(int n) {
    super(
        Kind.CONFLICT,
        "nothing-to-undo",
        "Nothing to undo",
        "Nothing was done with recipient " + n + " yet, or all of it was taken back.");
  }
}
