package org.barreltally.shows.plan;

import java.util.List;

/**
 * What is taken after the cut, candidate by candidate.
 *
 * @param pieces per candidate
 * @param prices of what was scarce
 * @param gain expected of all pieces, in money
 * @param bound no way to share out what is scarce can be expected to gain more
 */
record Allotment(List<Integer> pieces, Prices prices, double gain, double bound) {
  Allotment {
    pieces = List.copyOf(pieces);
  }
}
