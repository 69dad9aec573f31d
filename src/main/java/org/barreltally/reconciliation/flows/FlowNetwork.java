package org.barreltally.reconciliation.flows;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.barreltally.refusal.InvalidField;

/** Nodes at which everything that comes in goes out again, and the flows between them. */
public record FlowNetwork(List<String> nodes, List<Flow> flows) {

  /** More flows, or nodes, are not reckoned at once. */
  public static final int MOST = 1_000;

  private static final double LARGEST = 1e12;
  private static final double LEAST_VARIANCE = 1e-12;
  private static final int LONGEST_NAME = 120;

  /**
   * @throws NetworkTooLarge beyond {@link #MOST} flows or nodes
   * @throws NamedTwice if two nodes or two flows have one name
   * @throws UnknownNode if a flow names a node that is not there
   * @throws FlowToItself if a flow ends where it begins
   * @throws VarianceUnusable if a measured flow has no variance that can be used
   * @throws NothingMeasured if no flow was measured
   * @throws InvalidField naming what is missing or out of its range
   */
  public FlowNetwork {
    bounded(nodes, flows);
    nodes = List.copyOf(checkedNodes(nodes));
    checkFlows(nodes, flows);
    flows = List.copyOf(flows);
  }

  private static void bounded(List<String> nodes, List<Flow> flows) {
    if (nodes == null || nodes.isEmpty()) {
      throw new InvalidField("nodes", "Name at least one node.");
    }
    if (flows == null || flows.isEmpty()) {
      throw new InvalidField("flows", "Name at least one flow.");
    }
    if (nodes.size() > MOST) {
      throw new NetworkTooLarge("nodes", nodes.size());
    }
    if (flows.size() > MOST) {
      throw new NetworkTooLarge("flows", flows.size());
    }
  }

  private static List<String> checkedNodes(List<String> nodes) {
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < nodes.size(); i++) {
      named(nodes.get(i), "nodes[" + i + "]");
      if (!seen.add(nodes.get(i))) {
        throw new NamedTwice(nodes.get(i), "nodes[" + i + "]");
      }
    }
    return nodes;
  }

  private static void named(String name, String field) {
    if (name == null || name.isBlank() || name.length() > LONGEST_NAME) {
      throw new InvalidField(field, "Give a name of 1 to " + LONGEST_NAME + " characters.");
    }
  }

  private static void checkFlows(List<String> nodes, List<Flow> flows) {
    Set<String> known = new HashSet<>(nodes);
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < flows.size(); i++) {
      Flow flow = flows.get(i);
      String at = "flows[" + i + "]";
      named(flow == null ? null : flow.name(), at + ".name");
      if (!seen.add(flow.name())) {
        throw new NamedTwice(flow.name(), at + ".name");
      }
      checkEnds(flow, known, at);
      checkMeasured(flow, at);
    }
    if (flows.stream().noneMatch(Flow::isMeasured)) {
      throw new NothingMeasured();
    }
  }

  private static void checkEnds(Flow flow, Set<String> known, String at) {
    if (flow.from() != null && !known.contains(flow.from())) {
      throw new UnknownNode(flow.from(), at + ".from");
    }
    if (flow.to() != null && !known.contains(flow.to())) {
      throw new UnknownNode(flow.to(), at + ".to");
    }
    if (flow.from() == null && flow.to() == null) {
      throw new InvalidField(at + ".from", "Say at least one node it comes from or goes to.");
    }
    if (flow.from() != null && flow.from().equals(flow.to())) {
      throw new FlowToItself(flow.name(), flow.from(), at + ".to");
    }
  }

  private static void checkMeasured(Flow flow, String at) {
    if (!flow.isMeasured()) {
      if (flow.variance() != null) {
        throw new InvalidField(
            at + ".measured",
            "A variance belongs to a measured value. Give it, or leave both out.");
      }
      return;
    }
    if (!(Math.abs(flow.measured()) <= LARGEST)) {
      throw new InvalidField(at + ".measured", "Give a number of no more than 12 digits.");
    }
    Double variance = flow.variance();
    if (variance == null || !(variance >= LEAST_VARIANCE && variance <= LARGEST * LARGEST)) {
      throw new VarianceUnusable(flow.name(), variance, at + ".variance");
    }
  }

  /**
   * @throws NetworkInParts if some nodes are not joined to the others by any flow; parts are
   *     reckoned one by one, since nothing in one can check the other
   */
  public FlowNetwork inOnePiece() {
    Set<String> first = joinedTo(nodes.get(0));
    List<String> others = nodes.stream().filter(node -> !first.contains(node)).toList();
    if (!others.isEmpty()) {
      Set<String> part = joinedTo(others.get(0));
      throw new NetworkInParts(others.stream().filter(part::contains).toList(), nodes.get(0));
    }
    return this;
  }

  private Set<String> joinedTo(String start) {
    Map<String, List<String>> neighbours = new HashMap<>();
    for (Flow flow : flows) {
      if (flow.from() != null && flow.to() != null) {
        neighbours.computeIfAbsent(flow.from(), node -> new ArrayList<>()).add(flow.to());
        neighbours.computeIfAbsent(flow.to(), node -> new ArrayList<>()).add(flow.from());
      }
    }
    Set<String> seen = new HashSet<>(Set.of(start));
    Deque<String> open = new ArrayDeque<>(seen);
    while (!open.isEmpty()) {
      for (String next : neighbours.getOrDefault(open.pop(), List.of())) {
        if (seen.add(next)) {
          open.push(next);
        }
      }
    }
    return seen;
  }

  /** For each node its row of the balance: +1 where a flow comes in, −1 where it goes out. */
  double[][] balances(List<Flow> columns) {
    Map<String, Integer> row = new LinkedHashMap<>();
    nodes.forEach(node -> row.put(node, row.size()));
    double[][] balances = new double[nodes.size()][columns.size()];
    for (int j = 0; j < columns.size(); j++) {
      Flow flow = columns.get(j);
      if (flow.to() != null) {
        balances[row.get(flow.to())][j] = 1;
      }
      if (flow.from() != null) {
        balances[row.get(flow.from())][j] = -1;
      }
    }
    return balances;
  }
}
