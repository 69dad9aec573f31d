package org.barreltally.shows.plan;

import java.util.List;

/**
 * The demand to expect of one kind of jar, and what it leans on.
 *
 * @param demand at the show to come
 * @param here the takings at this same show, the oldest first
 * @param elsewhere how many takings at other shows were heard
 * @param guess whose first guess was mixed in
 */
record Forecast(NegativeBinomial demand, List<PastTaking> here, int elsewhere, Guess guess) {

  /** Where a first guess came from. */
  enum Guess {
    /** The owner gave it for this kind of jar. */
    OWNER,
    /** The owner's jars per hundred visitors, or the usual guess, shared over all kinds. */
    SHARED,
    /** From what other kinds of jars sold. */
    OTHER_KINDS
  }

  boolean isGuessedOnly() {
    return here.isEmpty() && elsewhere == 0;
  }
}
