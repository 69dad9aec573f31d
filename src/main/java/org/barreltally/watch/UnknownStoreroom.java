package org.barreltally.watch;

import org.barreltally.refusal.Refusal;

/** The address names a place where own stock never stands. */
public final class UnknownStoreroom extends Refusal {
  public UnknownStoreroom(String code) {
    super(
        Kind.NOT_FOUND,
        "unknown-storeroom",
        "No such storeroom",
        "There is no storeroom “" + code + "”. List the places at /api/places.");
  }
}
