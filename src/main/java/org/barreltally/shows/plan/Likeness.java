package org.barreltally.shows.plan;

import java.time.temporal.ChronoUnit;

/**
 * How much a past show counts for the one to come. Another show counts the less, the more its size
 * differs: by a factor of 2.5 in visitors or days it counts for 61 % (a Gaussian of the logarithm
 * of the ratio). Any show counts half after six years. No source: chosen wide, so that thin history
 * is shared and old habits fade.
 */
final class Likeness {

  private static final double SPREAD = Math.log(2.5);
  private static final double HALF_LIFE_DAYS = 6 * 365.25;
  private static final double LEAST = 1e-3;

  private Likeness() {}

  /** Above 0 and up to 1; 1 for a show just like it. */
  static double of(PastTaking past, ComingShow coming, ShowSize size) {
    double age = Math.max(0, ChronoUnit.DAYS.between(past.day(), coming.day()));
    double faded = Math.pow(0.5, age / HALF_LIFE_DAYS);
    double off = Math.log(size.of(past) / size.of(coming)) / SPREAD;
    boolean same = past.show().equals(coming.show());
    return Math.max(LEAST, same ? faded : faded * Math.exp(-off * off / 2));
  }
}
