package org.barreltally.shares;

import java.time.LocalDate;
import org.barreltally.refusal.Refusal;

/** Jars that count by their list price have none. */
public final class NoListPrice extends Refusal {
  public NoListPrice(String container, String grade, LocalDate on, String field) {
    super(
        Kind.RULE,
        "no-list-price",
        "No list price",
        "By this lease jars count by their list price, and no list has one for %s %s on %s. Enter it, or name another list in the terms."
            .formatted(container, grade, on),
        field);
  }
}
