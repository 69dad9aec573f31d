package org.barreltally.reconciliation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.barreltally.measure.Uncertain;
import org.barreltally.reconciliation.flows.Flow;
import org.barreltally.reconciliation.flows.FlowNetwork;

/** A season's network while it is built: nodes by their keys, flows by names people read. */
final class NetworkDraft {

  /** Grams; the book keeps whole ones. */
  private static final double LEAST_U = 1;

  private final NodeNames names;
  private final Set<String> nodes = new LinkedHashSet<>();
  private final List<Flow> flows = new ArrayList<>();
  private final Map<String, How> how = new LinkedHashMap<>();

  NetworkDraft(NodeNames names) {
    this.names = names;
  }

  NodeNames names() {
    return names;
  }

  boolean has(String node) {
    return nodes.contains(names.of(node));
  }

  /**
   * @param from key of a node; null outside
   * @param to likewise
   * @param value in grams; null if nobody measured it
   */
  void add(String name, String from, String to, Uncertain value, How known) {
    if (from == null && to == null) {
      return; // from one hand outside to another
    }
    String unique = name;
    for (int n = 2; how.containsKey(unique); n++) {
      unique = name + " (" + n + ")";
    }
    String start = from == null ? null : names.of(from);
    String end = to == null ? null : names.of(to);
    if (start != null) {
      nodes.add(start);
    }
    if (end != null) {
      nodes.add(end);
    }
    how.put(unique, value == null ? How.NOT_MEASURED : known);
    flows.add(
        value == null
            ? Flow.unmeasured(unique, start, end)
            : Flow.measured(unique, start, end, value.value(), Math.max(LEAST_U, value.u())));
  }

  /** The network; null if nothing in it was measured. */
  SeasonNetwork network(int season) {
    return flows.stream().noneMatch(Flow::isMeasured)
        ? null
        : new SeasonNetwork(
            season, new FlowNetwork(List.copyOf(nodes), List.copyOf(flows)), Map.copyOf(how));
  }
}
