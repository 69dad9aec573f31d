package org.barreltally.ledger;

import java.util.random.RandomGenerator;

/** The seed of a random test, said aloud so that a failure can be played again. */
final class Seed {

  private static final String PROPERTY = "barreltally.seed";

  private Seed() {}

  static long said(String of) {
    Long given = Long.getLong(PROPERTY);
    long seed = given == null ? RandomGenerator.getDefault().nextLong() : given;
    System.out.println("Seed of " + of + ": -D" + PROPERTY + "=" + seed);
    return seed;
  }
}
