package org.barreltally.errands;

import org.barreltally.refusal.Refusal;

/** More is asked than the program keeps waiting. */
public final class TooManyErrands extends Refusal {

  TooManyErrands(int waiting) {
    super(
        Kind.CONFLICT,
        "errands-waiting",
        "Too much is waiting",
        waiting + " pieces of work are waiting already. Ask again when some are done.");
  }
}
