package org.barreltally.documents;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** No print of labels of this lot has that id. */
public final class UnknownLabelPrint extends Refusal {

  /** The address names the print. */
  UnknownLabelPrint(String lot, UUID id) {
    super(Kind.NOT_FOUND, "unknown-label-print", "No such print", detail(lot, id));
  }

  /** A field of the request names the print. */
  UnknownLabelPrint(String lot, UUID id, String field) {
    super(Kind.INVALID, "unknown-label-print", "No such print", detail(lot, id), field);
  }

  private static String detail(String lot, UUID id) {
    return "There is no print "
        + id
        + " of labels like these. List the prints at /api/lots/"
        + lot
        + "/label-prints.";
  }
}
