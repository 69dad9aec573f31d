package org.barreltally.sales.away;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.barreltally.pricing.Money;

/**
 * A return.
 *
 * @param movement that brought the jars to be inspected
 * @param lines with what of each still waits for inspection
 */
public record Returned(
    UUID id,
    UUID sale,
    UUID movement,
    String reason,
    Money refund,
    Instant recordedAt,
    List<Line> lines) {

  /** Pieces of one size and lot. */
  public record Line(String container, String lot, UUID item, long count, long toInspect) {}

  public Returned {
    lines = List.copyOf(lines);
  }
}
