package org.barreltally.sales.bylot;

import java.util.List;
import java.util.Map;

/**
 * How many jars of each lot were sold at each table, and still stand there.
 *
 * @param sold by place and lot
 * @param standing by place and lot; none at tables that were counted
 * @param contradictions what does not fit; the bounds then hold whichever of the tellings is wrong
 * @param sharp whether no narrower bounds hold. Not so when there is too much to try, or when what
 *     was told does not fit together.
 */
public record SoldByLot(
    Map<String, Map<String, Bounds>> sold,
    Map<String, Map<String, Bounds>> standing,
    List<Contradiction> contradictions,
    boolean sharp) {

  public Bounds sold(String place, String lot) {
    return of(sold, place, lot);
  }

  public Bounds standing(String place, String lot) {
    return of(standing, place, lot);
  }

  private static Bounds of(Map<String, Map<String, Bounds>> all, String place, String lot) {
    return all.getOrDefault(place, Map.of()).getOrDefault(lot, Bounds.exactly(0));
  }
}
