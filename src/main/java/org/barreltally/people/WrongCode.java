package org.barreltally.people;

import org.barreltally.refusal.Refusal;

/** A code is none of the phone's at this moment, was taken before, or is no spare code. */
public final class WrongCode extends Refusal {

  WrongCode() {
    super(
        Kind.RULE,
        "wrong-code",
        "The code does not fit",
        "Give the code that the phone shows now; each is taken once. If none fits, compare the phone's"
            + " clock with the clock of the machine that keeps the book.",
        "code");
  }
}
