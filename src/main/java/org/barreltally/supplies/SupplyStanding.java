package org.barreltally.supplies;

import java.util.Locale;

/**
 * A supply as it stands.
 *
 * @param onHand pieces; null where it was never received or counted. Below zero, runs used more
 *     than the book had
 */
public record SupplyStanding(Supply supply, Long onHand) {

  /** How far what is on hand can be relied on. */
  public enum State {
    NOT_COUNTED_YET,
    COUNTED,
    /** Below zero in the book. */
    COUNT_NEEDED;

    /** {@code not-counted-yet, counted, count-needed}. */
    public String code() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  public State state() {
    if (onHand == null) {
      return State.NOT_COUNTED_YET;
    }
    return onHand < 0 ? State.COUNT_NEEDED : State.COUNTED;
  }

  /** Whether it stands at or under its low line. */
  public boolean low() {
    return onHand != null && supply.lowLine() != null && onHand <= supply.lowLine();
  }
}
