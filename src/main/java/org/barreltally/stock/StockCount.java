package org.barreltally.stock;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

/**
 * A count as it was kept.
 *
 * @param by who counted
 * @param movement by which the book followed; null if nothing was posted
 * @param lines every line that was counted, in the order it was told
 */
public record StockCount(
    UUID id, String place, Instant countedAt, String by, UUID movement, List<Line> lines) {

  public StockCount {
    lines = List.copyOf(lines);
  }

  /**
   * What the book had and what was counted, in pieces.
   *
   * @param suspectedSwap the lot of the same size that is off by as much the other way: probably
   *     labels were mixed up. Null if there is none.
   * @param cause what became of the jars that are short; null if nobody said
   * @param neverThere whether the lot had never stood at that place by the book
   */
  public record Line(
      String container,
      String lot,
      long book,
      long counted,
      String suspectedSwap,
      Cause cause,
      boolean neverThere) {

    /** Above zero if there are more than the book had. */
    public long difference() {
      return counted - book;
    }

    Line swappedWith(String other) {
      return new Line(container, lot, book, counted, other, cause, neverThere);
    }
  }

  /** The lines that were off. */
  public List<Line> differences() {
    return lines.stream().filter(line -> line.difference() != 0).toList();
  }
}
