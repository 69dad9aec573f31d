package org.barreltally.cost;

import org.barreltally.refusal.Refusal;

/** A closed year was to be valued by another method. */
public final class MethodKept extends Refusal {
  public MethodKept(int year, int lastClosed) {
    super(
        Kind.CONFLICT,
        "method-kept",
        "A closed year keeps its method",
        "The book is closed up to %d, so %d keeps its method. Choose one for %d or later."
            .formatted(lastClosed, year, lastClosed + 1),
        "year");
  }
}
