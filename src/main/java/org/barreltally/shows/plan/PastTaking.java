package org.barreltally.shows.plan;

import java.time.LocalDate;

/**
 * What became of one kind of jar at one past show.
 *
 * @param show what names the show over the years
 * @param day its first
 * @param taken pieces that stood at the table
 * @param sold pieces
 * @param soldOut whether none was left, so that more might have been sold
 * @param days it lasted, 1 or more
 * @param visitors over all days; null where nobody said
 */
public record PastTaking(
    String show,
    LocalDate day,
    JarKind jar,
    long taken,
    long sold,
    boolean soldOut,
    int days,
    Integer visitors) {

  /** One who brought none learns nothing of what was wanted. */
  boolean tells() {
    return taken > 0;
  }
}
