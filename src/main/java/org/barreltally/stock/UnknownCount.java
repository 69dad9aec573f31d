package org.barreltally.stock;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** No count has that id. */
public final class UnknownCount extends Refusal {
  public UnknownCount(UUID id) {
    super(
        Kind.NOT_FOUND,
        "unknown-count",
        "No such count",
        "There is no count " + id + ". Its id stood in the answer when it was sent in.");
  }
}
