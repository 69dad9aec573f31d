package org.barreltally.shows;

import java.time.Instant;
import java.util.List;

/**
 * What came home from a show was counted.
 *
 * @param lines one per container and lot, a count of 0 where all of it is gone
 * @param drawer the cash was counted too; null if not
 * @param to the room the jars went to; null for the cool room
 * @param at when; null for now
 * @param closes whether the show is over with it; null for yes
 * @param note may be null
 */
public record ComeBack(
    List<Line> lines, Drawer drawer, String to, Instant at, Boolean closes, String note) {

  /**
   * Jars of one container and lot, in pieces.
   *
   * @param count whole jars that came home
   * @param broken on the way or at the table; null for none
   * @param sampled opened to taste; null for none
   * @param wetLabels of those counted, how many have a wet or loose label; null for none
   */
  public record Line(
      String container, String lot, Long count, Long broken, Long sampled, Long wetLabels) {

    long brokenOrNone() {
      return broken == null ? 0 : broken;
    }

    long sampledOrNone() {
      return sampled == null ? 0 : sampled;
    }

    long wetOrNone() {
      return wetLabels == null ? 0 : wetLabels;
    }
  }

  public ComeBack {
    lines = lines == null ? List.of() : lines;
  }
}
