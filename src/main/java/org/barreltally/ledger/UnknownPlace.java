package org.barreltally.ledger;

import org.barreltally.refusal.Refusal;

/** A place is named that the book does not know, or one where own stock never stands. */
public final class UnknownPlace extends Refusal {
  public UnknownPlace(String code, String field, String known) {
    super(
        Kind.INVALID,
        "unknown-place",
        "No such place",
        "There is no place “" + code + "” for stock. Use one of: " + known + ".",
        field);
  }
}
