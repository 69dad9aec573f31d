package org.barreltally.pricing;

import org.barreltally.measure.ColorClass;

/**
 * Jars somebody buys.
 *
 * @param container code of the size
 * @param grade null where it is not known
 * @param count 0 or more
 * @param each a price agreed for one of them, which no deal changes; null for the list's price
 */
public record BasketLine(String container, ColorClass grade, int count, Money each) {

  /** Jars at the list's price. */
  public static BasketLine of(String container, ColorClass grade, int count) {
    return new BasketLine(container, grade, count, null);
  }
}
