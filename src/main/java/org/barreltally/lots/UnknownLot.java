package org.barreltally.lots;

import org.barreltally.refusal.Refusal;

/** A lot is named that the book does not know. */
public final class UnknownLot extends Refusal {

  /** The address names the lot. */
  public UnknownLot(String code) {
    super(Kind.NOT_FOUND, "unknown-lot", "No such lot", detail(code));
  }

  /** A field of the request names the lot. */
  public UnknownLot(String code, String field) {
    super(Kind.INVALID, "unknown-lot", "No such lot", detail(code), field);
  }

  private static String detail(String code) {
    return "There is no lot “"
        + shown(code)
        + "”. Check the code on its label or list lots at /api/lots.";
  }
}
