package org.barreltally.reconciliation;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.barreltally.reconciliation.internal.BookFlows.Made;
import org.barreltally.reconciliation.internal.BookFlows.Moved;

/** What people call the nodes of a season's network, and the ways between them. */
final class NodeNames {

  private static final int LONGEST = 100;
  private static final Set<String> ROOMS = Set.of("barrel-room", "cool-room", "gift-shelf");

  private final Map<String, String> tags;
  private final Map<String, String> places;
  private final Map<String, String> runs;

  private final Set<String> counted = new HashSet<>();
  private final Map<String, String> pourings = new HashMap<>();

  NodeNames(List<String[]> tags, List<String[]> places, List<Made> runs, List<Moved> moved) {
    this.tags = tags.stream().collect(Collectors.toMap(t -> t[0], t -> t[1], (a, b) -> b));
    this.places = places.stream().collect(Collectors.toMap(p -> p[0], p -> p[1]));
    this.runs = runs.stream().collect(Collectors.toMap(m -> "run:" + m.movement(), Made::lot));
    moved.forEach(m -> counted.addAll(List.of(m.from(), m.to())));
    moved.stream()
        .filter(m -> m.from().startsWith("run:") && m.to().startsWith("bulk:"))
        .forEach(m -> pourings.put(m.from(), m.to().split(":")[1]));
  }

  /** The lot a run made; null if the node is none of a run. */
  String lotMadeBy(String node) {
    return runs.get(node);
  }

  /** Whether jars there stand away from home. */
  boolean isAway(String node) {
    return node.startsWith("jars:") && !ROOMS.contains(node.split(":")[1]);
  }

  String of(String node) {
    String[] parts = node.split(":");
    return shortened(
        switch (parts[0]) {
          case "bulk" -> barrel(parts[1]) + stage(Integer.parseInt(parts[2]));
          case "dip" -> barrel(parts[1]) + ", before the dipstick";
          case "sold" -> barrel(parts[1]) + ", on its way to the buyer";
          case "run" ->
              runs.containsKey(node)
                  ? "Canning " + runs.get(node)
                  : "Topping up " + barrel(pourings.getOrDefault(node, parts[1]));
          case "jars" ->
              place(parts[1]) + ", " + parts[2] + (parts[3].equals("c") ? "" : uncounted(node));
          case "out" -> place(parts[1]);
          case "pan" -> "The pan";
          default -> "Boiling";
        });
  }

  /** A table is counted when its jars come home; a shelf only if somebody counts it. */
  private String uncounted(String node) {
    boolean others = counted.contains(node.substring(0, node.length() - 1) + "c");
    return others || !isAway(node) ? " (not counted)" : "";
  }

  private static String stage(int nth) {
    return nth == 0 ? "" : ", since it was weighed again (" + nth + ")";
  }

  private String barrel(String lot) {
    return tags.containsKey(lot) ? tags.get(lot) + " (" + lot + ")" : "Lot " + lot;
  }

  private String place(String code) {
    return places.getOrDefault(code, code);
  }

  /** What goes from one node to another. */
  String way(String from, String to, String kind) {
    String what = kind.replace('-', ' ').toLowerCase(Locale.ROOT);
    return shortened(
        from.startsWith("out:")
            ? of(to) + ": " + what + ", from " + of(from)
            : of(from) + ": " + what + ", to " + of(to));
  }

  private static String shortened(String name) {
    return name.length() <= LONGEST ? name : name.substring(0, LONGEST - 1) + "…";
  }
}
