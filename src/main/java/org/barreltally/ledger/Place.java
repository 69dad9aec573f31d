package org.barreltally.ledger;

import java.util.Locale;

/**
 * Where stock stands, or where it came from or went to.
 *
 * @param belowZero whether a balance here may go below zero
 * @param setAside whether jars come and go here by the steps of gift orders alone
 */
public record Place(String code, String name, Kind kind, boolean belowZero, boolean setAside) {

  /** What a place is to the book. */
  public enum Kind {
    /** Own rooms. */
    HOME,
    /** Own stock away from home: a show table, a shop's shelf. */
    OUT,
    /** The world beyond the book. */
    OUTSIDE,
    /** Where grams of one thing become another. */
    CONVERSION;

    /** {@code home, out, outside, conversion}. */
    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Own stock stands here, at home or out. */
  public boolean isOwn() {
    return kind == Kind.HOME || kind == Kind.OUT;
  }
}
