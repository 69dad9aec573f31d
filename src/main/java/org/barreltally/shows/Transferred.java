package org.barreltally.shows;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.barreltally.measure.ColorClass;

/** Jars that went from one table to another; both tables show it. */
public record Transferred(
    UUID id, UUID from, UUID to, UUID movement, Instant at, List<Line> lines) {

  /**
   * Jars of one container.
   *
   * @param lot the lot they were of; null where the counts must tell
   * @param grade null where it is not known either
   */
  public record Line(String container, String lot, ColorClass grade, long count) {}
}
