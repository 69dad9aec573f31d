package org.barreltally.shows.plan;

import java.util.List;

/**
 * The room on a show's tables. Each tier is a shelf as long as the table and as deep as its part of
 * the table's depth. A facing is a row of jars of one kind from the front to the back; its cost is
 * the length of shelf it takes.
 */
final class TableSpace {

  private record Shelf(double length, double depth) {}

  /**
   * A table.
   *
   * @param length along the aisle, inches, above 0
   * @param depth front to back, inches, above 0
   * @param tiers 1 or more
   */
  record Table(double length, double depth, int tiers) {}

  private final List<Shelf> shelves;
  private final double shareForDisplay;

  private TableSpace(List<Shelf> shelves, double shareForDisplay) {
    this.shelves = shelves;
    this.shareForDisplay = shareForDisplay;
  }

  /**
   * @param shareForDisplay of every shelf's length that is kept for awards and pictures, 0 to 1
   */
  static TableSpace of(List<Table> tables, double shareForDisplay) {
    List<Shelf> shelves =
        tables.stream().map(t -> new Shelf(t.length() * t.tiers(), t.depth() / t.tiers())).toList();
    return new TableSpace(shelves, shareForDisplay);
  }

  /** The length of all shelves, inches. */
  double length() {
    return shelves.stream().mapToDouble(Shelf::length).sum();
  }

  /** The length for jars, inches. */
  double lengthForJars() {
    return length() * (1 - shareForDisplay);
  }

  /**
   * How many jars stand one behind the other in a facing, on average over unlike tables and rounded
   * down; 0 where a jar fits on no shelf.
   */
  int deep(Footprint jar) {
    double rows =
        shelves.stream()
            .mapToDouble(shelf -> Math.floor(shelf.depth() / jar.depth() + 1e-9) * shelf.length())
            .sum();
    return rows == 0 ? 0 : (int) Math.max(1, Math.floor(rows / length() + 1e-9));
  }
}
