package org.barreltally.documents.rest;

import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;

/** Answers a PDF that a browser shows and saves under a name. */
final class PdfAnswer {

  static final String TYPE = "application/pdf";

  /** What every paper of labels says of itself in the description of the interface. */
  static final String CAUTION =
      " Print at 100 %, first on plain paper held against the sheet. A label says what the book says;"
          + " whether it is all a label must say, your state agency and weights-and-measures office"
          + " decide.";

  static final String EXAMPLE = "%PDF-1.5 …";

  private PdfAnswer() {}

  /**
   * @param name of the file without its ending: letters, digits, dots and dashes
   */
  static Response of(byte[] pdf, String name) {
    return Response.ok(pdf, TYPE)
        .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"" + name + ".pdf\"")
        .build();
  }
}
