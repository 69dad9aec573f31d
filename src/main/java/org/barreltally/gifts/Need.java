package org.barreltally.gifts;

import java.util.List;

/**
 * Jars that a recipient is to get.
 *
 * @param n number of the recipient
 * @param choices what it may be, the first choice first
 * @param pieces at least one
 */
public record Need(int n, List<Jar> choices, long pieces) {

  /** What it is without a substitute. */
  public Jar wanted() {
    return choices.get(0);
  }
}
