package org.barreltally.documents;

import org.barreltally.refusal.Refusal;

/** A paper would have nothing on it. */
public final class NothingToPrint extends Refusal {
  public NothingToPrint(String why) {
    super(Kind.CONFLICT, "nothing-to-print", "There is nothing to print", why);
  }
}
