package org.barreltally.cost;

import org.barreltally.refusal.Refusal;

/** A cost names a run or supply that the book does not know. */
public final class UnknownBearer extends Refusal {
  public UnknownBearer(String field, String name, String where) {
    super(
        Kind.INVALID,
        "unknown-bearer",
        "What it belongs to is not known",
        "There is no %s “%s”. List them at %s.".formatted(field, shown(name), where),
        field);
  }
}
