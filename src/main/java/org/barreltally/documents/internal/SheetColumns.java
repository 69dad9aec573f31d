package org.barreltally.documents.internal;

import org.barreltally.documents.Paper;

/**
 * Where the columns of a price list stand. Lengths in points.
 *
 * @param number of columns on each page
 * @param head height of the head of the first page, and of the others
 */
record SheetColumns(Paper paper, int number, double head, double laterHead) {

  /** Half an inch and a little: what printers leave blank, and a thumb. */
  static final double MARGIN = 42;

  static final double FOOT = 46;
  private static final double BETWEEN = 26;

  double width() {
    return (inner() - (number - 1) * BETWEEN) / number;
  }

  double inner() {
    return paper.width() - 2 * MARGIN;
  }

  double x(int column) {
    return MARGIN + column * (width() + BETWEEN);
  }

  double top(int page) {
    return paper.height() - MARGIN - (page == 0 ? head : laterHead);
  }

  double bottom() {
    return MARGIN + FOOT;
  }
}
