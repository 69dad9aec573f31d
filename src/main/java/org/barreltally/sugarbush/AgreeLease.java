package org.barreltally.sugarbush;

import java.util.List;

/**
 * A lease is agreed.
 *
 * @param landowner by name; made known if new
 * @param taps of the kind that governs where they do not say another; may be empty until counted
 */
public record AgreeLease(
    String landowner, String bush, Integer season, LeaseTerms terms, List<TapCount> taps) {

  public AgreeLease {
    taps = taps == null ? List.of() : List.copyOf(taps);
  }
}
