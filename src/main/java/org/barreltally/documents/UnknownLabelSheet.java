package org.barreltally.documents;

import org.barreltally.refusal.Refusal;

/** A label sheet is named that nobody added. */
public final class UnknownLabelSheet extends Refusal {

  /** The address names the sheet. */
  UnknownLabelSheet(String code) {
    super(Kind.NOT_FOUND, "unknown-label-sheet", "No such label sheet", detail(code));
  }

  /** A field of the request names the sheet. */
  UnknownLabelSheet(String code, String field) {
    super(Kind.INVALID, "unknown-label-sheet", "No such label sheet", detail(code), field);
  }

  private static String detail(String code) {
    return "There is no label sheet “"
        + shown(code)
        + "”. List them at /api/label-sheets, or add yours there.";
  }
}
