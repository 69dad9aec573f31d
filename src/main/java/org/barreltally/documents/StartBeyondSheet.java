package org.barreltally.documents;

import org.barreltally.refusal.Refusal;

/** Printing was to begin at a label that the sheet does not have. */
public final class StartBeyondSheet extends Refusal {
  StartBeyondSheet(String said, LabelSheet sheet) {
    super(
        Kind.INVALID,
        "start-beyond-sheet",
        "The sheet has no such label",
        "Label "
            + shown(said)
            + " is not on sheet "
            + sheet.code()
            + "; its labels are numbered 1 to "
            + sheet.labelsPerPage()
            + ", along each row from the left.",
        "startAt");
  }
}
