package org.barreltally.shows;

import java.time.LocalDate;
import org.barreltally.refusal.Refusal;

/** A show is said to end before it starts. */
public final class EndsBeforeStart extends Refusal {
  public EndsBeforeStart(LocalDate starts, LocalDate ends) {
    super(
        Kind.INVALID,
        "ends-before-start",
        "It ends before it starts",
        "The show starts on %s and cannot end on %s. Mend one of the days.".formatted(starts, ends),
        "ends");
  }
}
