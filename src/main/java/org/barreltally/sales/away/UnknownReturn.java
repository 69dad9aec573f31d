package org.barreltally.sales.away;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** No return has that id. */
public final class UnknownReturn extends Refusal {
  public UnknownReturn(UUID id) {
    super(
        Kind.NOT_FOUND,
        "unknown-return",
        "No such return",
        "There is no return " + id + ". Look it up with its sale.");
  }
}
