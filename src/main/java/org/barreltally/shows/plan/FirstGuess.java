package org.barreltally.shows.plan;

import java.util.Map;

/**
 * What the owner guesses before there is any history.
 *
 * @param per100Visitors jars of one kind
 * @param allPer100Visitors jars of all kinds together, shared over the kinds that have no guess of
 *     their own
 */
record FirstGuess(Map<JarKind, Double> per100Visitors, double allPer100Visitors) {

  /**
   * Two jars to a hundred visitors. Nobody measured it: a start, until the owner says otherwise.
   */
  static final double USUAL = 2;

  FirstGuess {
    per100Visitors = Map.copyOf(per100Visitors);
  }
}
