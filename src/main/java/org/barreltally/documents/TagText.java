package org.barreltally.documents;

import java.util.List;

/**
 * What stands on a tag.
 *
 * @param warning whether the head is white on black
 * @param head large words
 * @param lines below it, the first the largest
 * @param bars what the Code 128 says
 * @param scanned what the QR code says
 */
public record TagText(boolean warning, String head, List<Line> lines, String bars, String scanned) {

  /**
   * @param field under which a refusal names it
   */
  public record Line(String field, String text) {}
}
