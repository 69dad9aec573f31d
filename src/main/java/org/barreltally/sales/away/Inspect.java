package org.barreltally.sales.away;

import java.util.List;

/**
 * Returned jars were looked over.
 *
 * @param to the room that sound jars go to; null for the cool room
 * @param note may be null
 */
public record Inspect(List<Line> lines, String to, String note) {

  /**
   * Jars of one size and lot; each null for none.
   *
   * @param sound seal whole, clean, label readable: stock again
   * @param discarded anything in doubt
   */
  public record Line(String container, String lot, Long sound, Long broken, Long discarded) {}
}
