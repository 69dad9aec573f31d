package org.barreltally.shops;

import org.barreltally.refusal.Refusal;

/** Jars that stand in the book at a shop are in no line of its count. */
public final class NotCounted extends Refusal {
  public NotCounted(String jars) {
    super(
        Kind.INVALID,
        "not-counted",
        "Something was not counted",
        "The book also has %s there. Add a line for each, with count 0 where none is left."
            .formatted(jars),
        "lines");
  }
}
