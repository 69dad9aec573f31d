package org.barreltally.canning;

import org.barreltally.containers.Container;

/**
 * Jars of one size out of a batch.
 *
 * @param gramsEach syrup in one jar at its nominal contents
 * @param overfillGrams on top in each
 * @param count good jars
 * @param broken filled and broken, on top
 * @param possible how many of this size alone the batch would fill, after filter and heel
 */
record Fill(
    Container container,
    double gramsEach,
    double overfillGrams,
    int count,
    int broken,
    int possible) {

  double goodGrams() {
    return count * gramsEach;
  }

  /** What went over the nominal contents of the good jars. */
  double overfilled() {
    return count * overfillGrams;
  }

  /** A broken jar loses its overfill too. */
  double brokenGrams() {
    return broken * (gramsEach + overfillGrams);
  }

  double grams() {
    return goodGrams() + overfilled() + brokenGrams();
  }
}
