package org.barreltally.web.csv;

import jakarta.ws.rs.core.MediaType;
import java.util.List;

/** How a list is asked for as CSV. */
enum Asked {
  /** By the address, {@code ?as=csv}: a person who opens it in a browser or a spreadsheet. */
  IN_ADDRESS,
  /** By the header Accept: a program. */
  IN_ACCEPT;

  static final MediaType CSV = new MediaType("text", "csv");

  /**
   * Whether the best of the acceptable forms that a list has is CSV.
   *
   * @param acceptable the best first
   */
  static boolean accepts(List<MediaType> acceptable) {
    for (MediaType form : acceptable) {
      if (form.isCompatible(MediaType.APPLICATION_JSON_TYPE)) {
        return false;
      }
      if (form.isCompatible(CSV)) {
        return true;
      }
    }
    return false;
  }
}
