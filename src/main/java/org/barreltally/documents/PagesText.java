package org.barreltally.documents;

import java.util.List;

/**
 * What stands on as many pages as it takes.
 *
 * @param title of the document, also at the foot of its pages
 * @param slots parts of equal height in which blocks begin, to be cut apart; 1 where blocks flow on
 */
public record PagesText(Paper paper, String title, int slots, List<Block> blocks) {

  public PagesText {
    blocks = List.copyOf(blocks);
  }

  /**
   * Rows that stay together on a page. Only what is longer than a page is parted.
   *
   * @param head how many of its first rows stand again where it goes on
   */
  public record Block(int head, List<FormText.Part> parts) {

    /** A block that is nowhere begun anew. */
    static Block of(FormText.Part... parts) {
      return new Block(0, List.of(parts));
    }
  }
}
