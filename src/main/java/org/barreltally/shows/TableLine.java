package org.barreltally.shows;

import org.barreltally.measure.ColorClass;

/**
 * What the ledger tells of the jars of one container and lot at a table, in pieces. What was taken
 * back by a reversal is not in it.
 *
 * @param lot null for jars whose lot nobody wrote down
 * @param grade as it is now; null where neither lot nor grade is known
 * @param packedOut from home
 * @param received from other tables
 * @param given to other tables
 * @param back home
 * @param sold less what buyers brought back; a settlement's share among the lots counts as sold
 * @param otherwise what came (above zero) or went by any other movement, counts for example
 * @param onTable what the book has there now: all of it added up
 */
public record TableLine(
    String container,
    String lot,
    ColorClass grade,
    long packedOut,
    long received,
    long given,
    long back,
    long broken,
    long sampled,
    long sold,
    long otherwise,
    long onTable) {

  /** Whether jars of it ever came to the table. */
  public boolean cameThere() {
    return packedOut + received > 0;
  }

  /** What left the table by other ways than a sale. */
  public long leftUnsold() {
    return given + back + broken + sampled;
  }
}
