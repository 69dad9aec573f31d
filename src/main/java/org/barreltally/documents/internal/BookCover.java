package org.barreltally.documents.internal;

import java.util.List;

/**
 * What stands before the chapters of a book and on each of its pages.
 *
 * @param over the title, whose book it is; also at the head of each page
 * @param title also at the head of each page
 * @param lines below the title
 * @param decide who decides, at the foot of the title page
 * @param state as of when the book stands; at the foot of each page
 */
public record BookCover(
    String over, String title, List<String> lines, String decide, String state) {

  public BookCover {
    lines = List.copyOf(lines);
  }
}
