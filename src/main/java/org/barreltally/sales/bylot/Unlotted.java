package org.barreltally.sales.bylot;

import java.util.Set;
import org.barreltally.ledger.PlaceCode;

/**
 * Jars that left a table without their lots being written down.
 *
 * @param from the place they left
 * @param to another table, {@link #SOLD}, or any other place where they are gone
 * @param count 0 or more
 * @param lots those they can be of; null if of any
 */
public record Unlotted(String from, String to, long count, Set<String> lots) {

  /** Where sold jars go. */
  public static final String SOLD = PlaceCode.CUSTOMER;

  public Unlotted {
    if (count < 0 || from.equals(to)) {
      throw new IllegalArgumentException(count + " jars from " + from + " to " + to);
    }
    lots = lots == null ? null : Set.copyOf(lots);
  }

  boolean canBe(String lot) {
    return lots == null || lots.contains(lot);
  }
}
