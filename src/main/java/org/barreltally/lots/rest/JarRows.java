package org.barreltally.lots.rest;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.barreltally.lots.JarsInDoubt;
import org.barreltally.lots.Trace;
import org.barreltally.lots.Whereabouts;

/**
 * The jars of a trace, place by place: what surely is there, and what may be. Where sales without
 * lot are open, the book's own figure for a table says too much, and bounds take its place.
 */
final class JarRows {

  /** The outside accounts that are people; all others are places of the book. */
  private static final Set<String> RECIPIENTS =
      Set.of("customer", "bulk-buyer", "landowner", "given");

  private static final String BUYERS = "customer";

  private record Spot(String lot, String place, String container) implements Comparable<Spot> {
    @Override
    public int compareTo(Spot other) {
      return (lot + "\n" + place + "\n" + container)
          .compareTo(other.lot + "\n" + other.place + "\n" + other.container);
    }
  }

  private final Map<Spot, Long> exact = new TreeMap<>();
  private final Map<Spot, Long> possible = new TreeMap<>();

  private JarRows() {}

  static List<TraceView.Jars> of(Trace trace) {
    JarRows rows = new JarRows();
    trace.jars().stream()
        .filter(Whereabouts.Jars::isStanding)
        .forEach(
            jars ->
                rows.exact.put(
                    new Spot(jars.lot(), jars.place(), jars.container()), jars.pieces()));
    for (JarsInDoubt.Doubt doubt : trace.doubts()) {
      Spot table = new Spot(doubt.lot(), doubt.place(), doubt.container());
      Spot buyers = new Spot(doubt.lot(), BUYERS, doubt.container());
      rows.exact.put(table, doubt.standingLeast());
      rows.possible.merge(table, doubt.standingMost() - doubt.standingLeast(), Long::sum);
      rows.exact.merge(buyers, doubt.soldLeast(), Long::sum);
      rows.possible.merge(buyers, doubt.soldMost() - doubt.soldLeast(), Long::sum);
    }
    List<TraceView.Jars> shown = new ArrayList<>();
    rows.exact.forEach((spot, count) -> add(shown, spot, count, "exact"));
    rows.possible.forEach((spot, count) -> add(shown, spot, count, "possible"));
    return shown;
  }

  private static void add(List<TraceView.Jars> shown, Spot spot, long count, String certainty) {
    if (count <= 0) {
      return;
    }
    boolean person = RECIPIENTS.contains(spot.place());
    shown.add(
        new TraceView.Jars(
            spot.lot(),
            person ? null : spot.place(),
            person ? spot.place() : null,
            spot.container(),
            count,
            certainty));
  }
}
