package org.barreltally.pricing;

import org.barreltally.measure.ColorClass;

/**
 * So many jars together for one price.
 *
 * @param container code of the size
 * @param grade null for jars of any grade, mixed as the buyer likes
 * @param count jars, 2 to 1000
 * @param price of them together, 0 or more
 */
public record Deal(String container, ColorClass grade, int count, Money price) {

  /** Whether a jar of this size and grade (null where it is not known) can be one of them. */
  public boolean takes(String container, ColorClass grade) {
    return this.container.equals(container) && (this.grade == null || this.grade == grade);
  }
}
