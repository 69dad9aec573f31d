package org.barreltally.lots;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Jars of a lot at a place of the book or at one of its outside accounts: those that surely are
 * there, or those beyond them that may be.
 *
 * @param place a place or outside account
 * @param count pieces, above zero
 * @param exact false where jars were sold or carried without lot and may be there; the same jar can
 *     then stand in several lines
 */
public record JarsTold(String lot, String place, String container, long count, boolean exact) {

  private static final String BUYERS = "customer";

  private record Spot(String lot, String place, String container) implements Comparable<Spot> {
    @Override
    public int compareTo(Spot other) {
      return (lot + "\n" + place + "\n" + container)
          .compareTo(other.lot + "\n" + other.place + "\n" + other.container);
    }
  }

  /**
   * The jars of a trace, place by place, the sure ones first. Where sales without lot are open, the
   * book's own figure for a table says too much, and bounds take its place.
   */
  public static List<JarsTold> of(Trace trace) {
    Map<Spot, Long> exact = new TreeMap<>();
    Map<Spot, Long> possible = new TreeMap<>();
    trace.jars().stream()
        .filter(Whereabouts.Jars::isStanding)
        .forEach(
            jars -> exact.put(new Spot(jars.lot(), jars.place(), jars.container()), jars.pieces()));
    for (JarsInDoubt.Doubt doubt : trace.doubts()) {
      Spot table = new Spot(doubt.lot(), doubt.place(), doubt.container());
      Spot buyers = new Spot(doubt.lot(), BUYERS, doubt.container());
      exact.put(table, doubt.standingLeast());
      possible.merge(table, doubt.standingMost() - doubt.standingLeast(), Long::sum);
      exact.merge(buyers, doubt.soldLeast(), Long::sum);
      possible.merge(buyers, doubt.soldMost() - doubt.soldLeast(), Long::sum);
    }
    List<JarsTold> told = new ArrayList<>();
    exact.forEach((spot, count) -> add(told, spot, count, true));
    possible.forEach((spot, count) -> add(told, spot, count, false));
    return told;
  }

  private static void add(List<JarsTold> told, Spot spot, long count, boolean exact) {
    if (count > 0) {
      told.add(new JarsTold(spot.lot(), spot.place(), spot.container(), count, exact));
    }
  }
}
