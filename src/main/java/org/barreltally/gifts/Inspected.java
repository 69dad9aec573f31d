package org.barreltally.gifts;

import java.util.List;

/**
 * What was found in a parcel that came back.
 *
 * @param lines every lot and size that was in it
 * @param keep whether the good jars stay with the recipient to be sent again; if null, they do.
 *     Otherwise they go back to stock
 */
public record Inspected(List<Line> lines, Boolean keep) {

  /** Jars of one lot and size; good and broken add up to what was sent. */
  public record Line(String container, String lot, Long good, Long broken) {

    long goodPieces() {
      return good == null ? 0 : good;
    }

    long brokenPieces() {
      return broken == null ? 0 : broken;
    }
  }

  boolean kept() {
    return keep == null || keep;
  }
}
