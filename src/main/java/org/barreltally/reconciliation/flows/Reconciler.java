package org.barreltally.reconciliation.flows;

import java.util.ArrayList;
import java.util.List;

/** Reconciles networks. Pure: the same network, the same answer. */
public final class Reconciler {

  /** Less of a measurement's variance than this is no check of it. */
  private static final double UNCHECKED = 1e-9;

  private Reconciler() {}

  public static Reconciled reconcile(FlowNetwork network) {
    List<Flow> measured = network.flows().stream().filter(Flow::isMeasured).toList();
    List<Flow> unmeasured = network.flows().stream().filter(f -> !f.isMeasured()).toList();
    double[][] a = network.balances(measured);
    LeastSquares squares =
        LeastSquares.of(
            a,
            network.balances(unmeasured),
            measured.stream().mapToDouble(Flow::measured).toArray(),
            measured.stream().mapToDouble(flow -> Math.sqrt(flow.variance())).toArray());
    List<Suspicion> suspicions = suspicions(network, measured, squares);
    GrossErrors errors =
        suspicions.isEmpty() ? null : new GrossErrors(squares.contradiction(), suspicions);
    List<Suspect> suspects = errors == null ? List.of() : errors.find();
    return new Reconciled(
        flows(network, squares, suspects),
        nodes(network),
        GlobalTest.of(squares.objective(), squares.redundancy()),
        errors == null ? null : errors.critical(),
        suspects);
  }

  private static List<Suspicion> suspicions(
      FlowNetwork network, List<Flow> measured, LeastSquares squares) {
    List<Suspicion> suspicions = new ArrayList<>();
    for (int j = 0; j < measured.size(); j++) {
      if (squares.checked(j) > UNCHECKED) {
        suspicions.add(new Suspicion(measured.get(j).name(), null, squares.biasOf(j)));
      }
    }
    for (int i = 0; i < network.nodes().size(); i++) {
      double[] direction = squares.imbalanceOf(i);
      if (direction != null) {
        suspicions.add(new Suspicion(null, network.nodes().get(i), direction));
      }
    }
    return suspicions;
  }

  private static List<ReconciledFlow> flows(
      FlowNetwork network, LeastSquares squares, List<Suspect> suspects) {
    double[] reconciled = squares.reconciled();
    double[] found = squares.unmeasured();
    List<ReconciledFlow> flows = new ArrayList<>();
    int nextMeasured = 0;
    int nextUnmeasured = 0;
    for (Flow flow : network.flows()) {
      flows.add(
          flow.isMeasured()
              ? checked(flow, nextMeasured, reconciled[nextMeasured++], squares, suspects)
              : found(flow, nextUnmeasured, found[nextUnmeasured++], squares));
    }
    return flows;
  }

  private static ReconciledFlow checked(
      Flow flow, int j, double reconciled, LeastSquares squares, List<Suspect> suspects) {
    double part = squares.checked(j);
    if (part <= UNCHECKED) {
      double u = Math.sqrt(flow.variance());
      return new ReconciledFlow(flow, flow.measured(), u, 0.0, null, null, 0.0, false);
    }
    double u = squares.adjustmentU(j);
    double standardized = squares.adjustment(j) / u;
    return new ReconciledFlow(
        flow,
        reconciled,
        squares.reconciledU(j),
        squares.adjustment(j),
        u,
        standardized,
        Math.min(1, part),
        suspects.stream().anyMatch(suspect -> suspect.names(flow.name())));
  }

  private static ReconciledFlow found(Flow flow, int j, double value, LeastSquares squares) {
    boolean determined = squares.determined(j);
    return new ReconciledFlow(
        flow,
        determined ? value : null,
        determined ? squares.unmeasuredU(j) : null,
        null,
        null,
        null,
        null,
        false);
  }

  private static List<ReconciledNode> nodes(FlowNetwork network) {
    return network.nodes().stream().map(node -> node(node, network.flows())).toList();
  }

  /** The nodal test, of measured values alone. */
  private static ReconciledNode node(String node, List<Flow> flows) {
    double imbalance = 0;
    double variance = 0;
    for (Flow flow : flows) {
      boolean in = node.equals(flow.to());
      if (!in && !node.equals(flow.from())) {
        continue;
      }
      if (!flow.isMeasured()) {
        return new ReconciledNode(node, null, null, null);
      }
      imbalance += in ? flow.measured() : -flow.measured();
      variance += flow.variance();
    }
    double u = Math.sqrt(variance);
    return variance == 0
        ? new ReconciledNode(node, null, null, null)
        : new ReconciledNode(node, imbalance, u, imbalance / u);
  }
}
