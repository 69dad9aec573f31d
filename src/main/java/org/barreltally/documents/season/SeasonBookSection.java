package org.barreltally.documents.season;

import org.barreltally.documents.internal.BookPages;

/**
 * A chapter of the season book. Every bean of this kind is in the book; nothing else need be told
 * of it. What it writes must depend on the year alone, so that the book of a closed year says the
 * same whenever it is drawn: movements count by the year they are booked in, and what has none by
 * {@link BookYear#asOf}. It names no buyer, recipient or landowner.
 */
public interface SeasonBookSection {

  /** Where it stands: the lower before the higher. The book's own go up in hundreds from 100. */
  int order();

  /** Its title, also in the contents; no two are alike. */
  String title();

  void write(BookYear year, BookPages out);
}
